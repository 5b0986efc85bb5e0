package croftboard.ledger.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Any file of a table: CSV in whatever dress, or a spreadsheet; told by what is in it, not by its name. */
public final class Tables {
    private static final byte[] ZIP = {'P', 'K', 3, 4};
    private static final byte[] OLD_OFFICE = {(byte) 0xd0, (byte) 0xcf, 0x11, (byte) 0xe0};

    private static final int LOOKED_AT = 15;

    private Tables() { }

    public static Table.Reading read(byte[] content) {
        try {
            if (content.length > Table.MOST_BYTES) {
                throw new Table.Bad("larger than " + Table.MOST_BYTES / 1_000_000 + " MB -> export a shorter time");
            }
            if (begins(content, OLD_OFFICE) || begins(content, new byte[] {'%', 'P', 'D', 'F'})) {
                throw new Table.Bad("this kind of file cannot be read -> save it as .xlsx or .csv");
            }
            List<String> guesses = new ArrayList<>();
            List<Table.Row> all = begins(content, ZIP) ? Spreadsheet.rows(content, guesses) : Csv.rows(content, guesses);
            return new Table.Reading.Read(headed(all, guesses));
        } catch (Table.Bad e) {
            return new Table.Reading.Refused(e.getMessage());
        }
    }

    private static boolean begins(byte[] content, byte[] mark) {
        for (int i = 0; i < mark.length; i++) {
            if (i >= content.length || content[i] != mark[i]) {
                return false;
            }
        }
        return true;
    }

    /** The header is the first row nearly as full as the fullest of the first rows; rows without any words are left out. */
    private static Table headed(List<Table.Row> all, List<String> guesses) throws Table.Bad {
        long fullest = all.stream().limit(LOOKED_AT).mapToLong(Tables::filled).max().orElse(0);
        int at = 0;
        while (at < all.size() && filled(all.get(at)) < Math.max(2, (fullest * 2 + 2) / 3)) {
            at++;
        }
        if (at == all.size()) {
            throw new Table.Bad("no table in it -> the first line must name at least two columns");
        }
        if (at > 0) {
            guesses.add("The columns are named on line " + all.get(at).line() + "; what stands above is not read.");
        }
        List<String> header = new ArrayList<>(all.get(at).cells());
        while (!header.isEmpty() && header.get(header.size() - 1).isEmpty()) {
            header.remove(header.size() - 1);
        }
        Set<String> seen = new HashSet<>();
        for (String name : header) {
            if (!name.isEmpty() && !seen.add(name.toLowerCase(Locale.ROOT))) {
                throw new Table.Bad("two columns are called '" + name + "' -> each needs a name of its own");
            }
        }
        List<Table.Row> rows = new ArrayList<>();
        for (Table.Row row : all.subList(at + 1, all.size())) {
            if (row.cells().stream().anyMatch(c -> !c.isEmpty())) {
                rows.add(fitted(row, header.size()));
            }
        }
        return new Table(List.copyOf(header), List.copyOf(rows), List.copyOf(guesses));
    }

    private static long filled(Table.Row row) {
        return row.cells().stream().filter(c -> !c.isEmpty()).count();
    }

    private static Table.Row fitted(Table.Row row, int columns) throws Table.Bad {
        List<String> cells = new ArrayList<>(row.cells());
        while (cells.size() > columns) {
            if (!cells.remove(cells.size() - 1).isEmpty()) {
                throw new Table.Bad("line " + row.line() + " has more cells than there are columns -> put words with a comma in quotes");
            }
        }
        while (cells.size() < columns) {
            cells.add("");
        }
        return new Table.Row(row.line(), List.copyOf(cells));
    }
}
