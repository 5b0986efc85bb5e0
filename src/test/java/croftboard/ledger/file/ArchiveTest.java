package croftboard.ledger.file;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.ledger.Booked;
import croftboard.ledger.Booking;
import croftboard.ledger.Contents;
import croftboard.ledger.Entry;
import croftboard.ledger.RandomLedger;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class ArchiveTest {
    private static Contents contents(long seed) {
        List<Booking> bookings = new ArrayList<>();
        List<Entry> entries = new ArrayList<>();
        new RandomLedger(seed).book(draft -> {
            Booking booking = new Booking(bookings.size() + 1, draft.at(), draft.who(), draft.by(), draft.name(), draft.fingerprint());
            List<Entry> numbered = draft.numbered(booking, entries.size() + 1);
            bookings.add(booking);
            entries.addAll(numbered);
            return new Booked.Done(booking, numbered);
        }, 4, 30);
        return new Contents(bookings, entries);
    }

    @Test
    void everyLedger_comesBackToTheLetter() {
        for (long seed = 1; seed <= 200; seed++) {
            Contents contents = contents(seed);
            Map<String, byte[]> files = Archive.files(contents);
            assertThat(Archive.read(files)).as("seed %d", seed).isEqualTo(new Archive.Reading.Read(contents));
        }
    }

    @Test
    void formulas_areTextInTheExportAndComeBackUnchanged() {
        for (String text : List.of("=1+1", "+1 box", "-", "@x", "'quoted", "''", "\t=1", "\r\n", "-5", "3/4", "a,b", "\"", " x ", "")) {
            String cell = CsvOut.cell(text);
            assertThat(cell.replaceFirst("^\"", "")).doesNotStartWith("=").doesNotStartWith("@").doesNotStartWith("\t");
            try {
                assertThat(ExactCsv.rows(cell + ",z\r\n").get(0).cells()).containsExactly(text, "z");
            } catch (Table.Bad e) {
                throw new AssertionError(text, e);
            }
        }
    }

    @Test
    void anyByteChanged_isRefusedWithTheFilesName() {
        Random random = new Random(7);
        Map<String, byte[]> files = Archive.files(contents(3));
        for (int n = 0; n < 300; n++) {
            Map<String, byte[]> changed = new TreeMap<>(files);
            String name = Archive.names().get(random.nextInt(Archive.names().size()));
            byte[] bytes = files.get(name).clone();
            bytes[random.nextInt(bytes.length)] ^= (byte) (1 + random.nextInt(255));
            changed.put(name, bytes);
            assertThat(Archive.read(changed)).isInstanceOf(Archive.Reading.Refused.class);
        }
        Map<String, byte[]> less = new TreeMap<>(files);
        less.remove("sale.csv");
        assertThat(((Archive.Reading.Refused) Archive.read(less)).faults()).containsExactly("sale.csv is missing -> copy the whole folder");
    }

    /** The digests made right, so that the rows themselves are read. */
    @Test
    void rowsThatDoNotFit_areNamedByLine() {
        Map<String, byte[]> files = new TreeMap<>(Archive.files(contents(4)));
        String head = String.join(",", Archive.head(croftboard.ledger.Forms.of(croftboard.ledger.Withdrawal.class)));
        put(files, "withdrawal.csv", head + "\r\n9999,77,1,2027-08-16,1,x\r\n9998,1,1,2027-08-99,1,x\r\n9997,1,1,2027-08-16,99999,x\r\n");
        List<String> faults = ((Archive.Reading.Refused) Archive.read(files)).faults();
        assertThat(faults).contains("withdrawal.csv: line 2: there is no booking 77")
                .anyMatch(f -> f.startsWith("withdrawal.csv: line 3: cannot be understood"))
                .anyMatch(f -> f.startsWith("entry 9997 corrects entry 99999"));
    }

    private static void put(Map<String, byte[]> files, String name, String text) {
        String index = new String(files.get(Archive.CONTENTS), StandardCharsets.UTF_8);
        files.put(name, text.getBytes(StandardCharsets.UTF_8));
        String digest = Archive.digest(files.get(name));
        files.put(Archive.CONTENTS, index.replaceAll(name + ",[0-9a-f]+", name + "," + digest).getBytes(StandardCharsets.UTF_8));
    }
}
