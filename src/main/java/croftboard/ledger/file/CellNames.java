package croftboard.ledger.file;

import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Looks at the names of a sheet's cells before the sheet is read: the reader makes room for every column to the left of a cell,
 * so that one cell called {@code ZZZZZZ1} would fill the memory.
 */
final class CellNames {
    private static final int MOST_LETTERS = 2;

    private CellNames() { }

    /** @param part of a workbook; what is no XML is left to the reader, which refuses it */
    static void check(byte[] part) throws Table.Bad {
        try {
            XMLStreamReader xml = Xml.reader(part);
            while (xml.hasNext()) {
                if (xml.next() == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("c")) {
                    check(xml);
                }
            }
        } catch (XMLStreamException | RuntimeException e) {
            return;
        }
    }

    private static void check(XMLStreamReader cell) throws Table.Bad {
        for (int a = 0; a < cell.getAttributeCount(); a++) {
            String name = cell.getAttributeValue(a);
            if (cell.getAttributeLocalName(a).equals("r") && name.chars().filter(Character::isLetter).count() > MOST_LETTERS) {
                throw new Table.Bad("a cell is called " + Table.clean(name.substring(0, Math.min(12, name.length()))) + ": more than "
                        + Table.MOST_COLUMNS + " columns -> is this the right file?");
            }
        }
    }
}
