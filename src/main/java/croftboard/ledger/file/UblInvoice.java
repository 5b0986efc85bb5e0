package croftboard.ledger.file;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** An invoice as UBL 2.1, as far as the ledger needs it: supplier, delivery day, lines with quantity, price and amount. */
public final class UblInvoice {
    private static final int DEEPEST = 40;
    private static final int LOOKED_AT = 2_000;

    private UblInvoice() { }

    public sealed interface Reading { }

    /** @param supplier its name. @param table with the columns that {@link InvoiceFile} knows */
    public record Invoice(String supplier, Table table) implements Reading { }

    public record Refused(String why) implements Reading { }

    /** An XML file: nothing else that comes in begins like one. */
    public static boolean looksLike(byte[] content) {
        String begin = new String(content, 0, Math.min(content.length, LOOKED_AT), StandardCharsets.UTF_8).replace("\ufeff", "").strip();
        return begin.startsWith("<?xml") || begin.startsWith("<Invoice") || begin.matches("(?s)<\\w+:Invoice.*");
    }

    public static Reading read(byte[] content) {
        if (content.length > Table.MOST_BYTES) {
            return new Refused("larger than " + Table.MOST_BYTES / 1_000_000 + " MB");
        }
        try {
            return new Walk(Xml.reader(content)).invoice();
        } catch (XMLStreamException | Table.Bad | RuntimeException e) {
            return new Refused(e instanceof Table.Bad ? e.getMessage() : "this is no well-formed UBL invoice -> ask for it again, or take CSV");
        }
    }

    private static final class Walk {
        private final XMLStreamReader xml;
        private final Deque<String> path = new ArrayDeque<>();
        private final List<Table.Row> rows = new ArrayList<>();
        private final Map<String, String> head = new HashMap<>();
        private Map<String, String> line = new HashMap<>();
        private StringBuilder text = new StringBuilder();
        private boolean invoice;

        Walk(XMLStreamReader xml) {
            this.xml = xml;
        }

        Reading invoice() throws XMLStreamException, Table.Bad {
            while (xml.hasNext()) {
                switch (xml.next()) {
                    case XMLStreamConstants.START_ELEMENT -> open();
                    case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> text.append(xml.getText());
                    case XMLStreamConstants.END_ELEMENT -> close();
                    default -> { }
                }
            }
            if (!invoice) {
                return new Refused("this XML file is no UBL invoice -> a file that begins with <Invoice ...>");
            }
            return new Invoice(Table.clean(head.getOrDefault("supplier", "")), new Table(List.of("date", "code", "description", "pack", "quantity",
                    "price", "amount"), List.copyOf(rows), List.of()));
        }

        private void open() throws Table.Bad {
            path.addLast(xml.getLocalName());
            invoice |= path.size() == 1 && xml.getLocalName().equals("Invoice");
            if (path.size() > DEEPEST || rows.size() > Table.MOST_ROWS) {
                throw new Table.Bad("this invoice is nested deeper, or longer, than any invoice is");
            }
            if (path.peekLast().equals("InvoiceLine")) {
                line = new HashMap<>();
                line.put("at", Integer.toString(xml.getLocation().getLineNumber()));
            }
            String currency = xml.getAttributeValue(null, "currencyID");
            if (currency != null && !currency.equals("USD")) {
                throw new Table.Bad("money in " + Table.clean(currency) + " -> the ledger is in US dollars");
            }
            text = new StringBuilder();
        }

        private void close() throws Table.Bad {
            String where = String.join("/", path);
            String value = Table.clean(text.toString());
            text = new StringBuilder();
            if (value.length() > Table.LONGEST_CELL) {
                throw new Table.Bad("a text of more than " + Table.LONGEST_CELL + " letters");
            }
            switch (where) {
                case "Invoice/IssueDate" -> head.putIfAbsent("date", value);
                case "Invoice/Delivery/ActualDeliveryDate" -> head.put("date", value);
                case "Invoice/AccountingSupplierParty/Party/PartyName/Name" -> head.putIfAbsent("supplier", value);
                case "Invoice/InvoiceLine/InvoicedQuantity" -> line.put("quantity", value);
                case "Invoice/InvoiceLine/LineExtensionAmount" -> line.put("amount", value);
                case "Invoice/InvoiceLine/Item/Name" -> line.put("description", value);
                case "Invoice/InvoiceLine/Item/Description" -> line.put("pack", value);
                case "Invoice/InvoiceLine/Item/SellersItemIdentification/ID" -> line.put("code", value);
                case "Invoice/InvoiceLine/Price/PriceAmount" -> line.put("price", value);
                case "Invoice/InvoiceLine" -> add(line);
                case "Invoice/AllowanceCharge/AllowanceChargeReason" -> head.put("charge", value);
                case "Invoice/AllowanceCharge/ChargeIndicator" -> head.put("indicator", value);
                case "Invoice/AllowanceCharge/Amount" -> head.put("chargeAmount", value);
                case "Invoice/AllowanceCharge" -> charge();
                default -> { }
            }
            path.removeLast();
        }

        private void charge() {
            String sign = head.getOrDefault("indicator", "true").equals("false") ? "-" : "";
            String amount = sign + head.getOrDefault("chargeAmount", "0");
            add(Map.of("at", Integer.toString(xml.getLocation().getLineNumber()), "description", "charge: "
                    + head.getOrDefault("charge", "delivery") + " fee", "quantity", "1", "price", amount, "amount", amount));
            head.remove("charge");
        }

        private void add(Map<String, String> cells) {
            rows.add(new Table.Row(Integer.parseInt(cells.get("at")), List.of(head.getOrDefault("date", ""), cells.getOrDefault("code", ""),
                    cells.getOrDefault("description", ""), cells.getOrDefault("pack", ""), cells.getOrDefault("quantity", ""),
                    cells.getOrDefault("price", ""), cells.getOrDefault("amount", ""))));
        }
    }
}
