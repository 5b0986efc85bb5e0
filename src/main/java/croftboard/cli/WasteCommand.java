package croftboard.cli;

import croftboard.book.Book;
import croftboard.ledger.Entry;
import croftboard.ledger.Matching;
import croftboard.ledger.Quantity;
import croftboard.ledger.Waste;
import croftboard.ledger.file.Intake;
import croftboard.ledger.file.Memory;
import croftboard.ledger.file.WasteFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes what was thrown or given away into the ledger: a log, or one typed line. */
@Command(name = "waste", sortOptions = false, description = "Book what was thrown or given away: a log (CSV or XLSX with date, what,"
        + " portions or weight, reason), or one line such as \"2.5 lb carrot trim\" or \"6 portions lentil-bake spoiled on 2027-08-16\".",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY,
            "2:wrong use, or the file has faults; nothing was booked"})
final class WasteCommand implements Callable<Integer> {
    private static final Pattern TYPED = Pattern.compile("(\\d{1,6}(?:\\.\\d{1,3})?) ?(portions?|lbs?|oz|kg|g) (?:of )?(.+) (over[- ]production"
            + "|spoiled|trim|mistake|sampled|donated|other)(?: on (\\S+))?");
    @Parameters(arity = "1..*", paramLabel = "FILE | LINE", description = "the log, or one line")
    private List<String> words = new ArrayList<>();

    @Mixin
    private FileBooking booking;
    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    WasteCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        String line = String.join(" ", words).strip().replaceAll("\\s+", " ");
        boolean file = words.size() == 1 && line.matches("(?i).*\\.(csv|xlsx|txt|tsv|xls|pdf)");
        Optional<Path> path = file ? Optional.of(Path.of(words.get(0))) : Optional.empty();
        byte[] content = path.map(TakingIn::content).orElseGet(() -> line.getBytes(StandardCharsets.UTF_8));
        Book book = at.read(tools.books());
        Memory memory = TakingIn.memory(at.folder());
        Matching goods = goods(book, memory.names(WasteFile.SOURCE));
        LocalDate today = booking.taking().now(book, setting).toLocalDate();
        Intake.Read read = path.isPresent() ? FileBooking.good(path.get(), WasteFile.read(TakingIn.table(path.get(), content),
                booking.taking().columns(), memory.columns(WasteFile.SOURCE), goods))
                : new Intake.Read(List.of(typed(line, goods, today)), List.of(), Map.of());
        byte[] known = path.isPresent() ? content : (today + " " + line).getBytes(StandardCharsets.UTF_8);
        var about = new FileBooking.File(book, at.folder(), setting, "waste", path.orElse(Path.of(croftboard.ledger.Booking.TYPED)), known, memory,
                WasteFile.SOURCE);
        var revising = new FileBooking.Revising<Entry>(List.of(Waste.class), e -> path.isPresent() && e.stamp().booking().by().equals("waste")
                && !e.stamp().booking().name().equals(croftboard.ledger.Booking.TYPED), e -> List.of(e.date(), ((Waste) e).words(),
                ((Waste) e).reason()), (was, is) -> is, true);
        return booking.book(about, read, revising, w -> goods.nearest(w).stream().map(WasteCommand::bare).toList(), spec.commandLine().getOut());
    }

    static String bare(String means) {
        return means.startsWith(WasteFile.ITEM) ? means.substring(WasteFile.ITEM.length()) : means;
    }

    /** @param learned what words were said to mean */
    static Matching goods(Book book, Map<String, String> learned) {
        Matching goods = new Matching();
        book.recipes().values().forEach(r -> {
            goods.name(r.id(), r.id());
            goods.name(r.id(), r.name());
        });
        book.ingredients().values().forEach(i -> {
            goods.name(WasteFile.ITEM + i.id(), i.id());
            goods.name(WasteFile.ITEM + i.id(), i.name());
        });
        learned.forEach((words, id) -> goods.learned(words, book.ingredients().containsKey(id) ? WasteFile.ITEM + id : id));
        return goods;
    }

    private static Waste typed(String line, Matching goods, LocalDate today) {
        Matcher m = TYPED.matcher(line);
        if (!m.matches()) {
            throw new WrongUse("'" + line + "' is not understood -> such as: 2.5 lb carrot trim; 6 portions lentil-bake spoiled on 2027-08-16; reasons:"
                    + " over-production, spoiled, trim, mistake, sampled, donated, other; nothing was booked");
        }
        Optional<String> means = goods.of(m.group(3));
        if (means.isEmpty()) {
            List<String> near = goods.nearest(m.group(3)).stream().map(WasteCommand::bare).toList();
            throw new WrongUse("the book has no '" + m.group(3) + "' -> " + (near.isEmpty() ? "a dish or an ingredient of the book"
                    : "perhaps " + String.join(", ", near)) + "; nothing was booked");
        }
        boolean portions = m.group(2).startsWith("portion");
        Quantity many = Quantity.parse(m.group(1)).orElseThrow();
        long mg = portions ? 0 : WasteFile.mg(m.group(1) + " " + m.group(2).replaceFirst("^lbs$", "lb")).orElse(0L);
        if (portions && many.signum() == 0 || !portions && mg == 0) {
            throw new WrongUse("nothing was thrown away -> more than 0; nothing was booked");
        }
        return WasteFile.made(1, date(m.group(5), today), line, means, portions ? many : Quantity.ZERO, mg,
                Waste.Reason.named(m.group(4)).orElseThrow(), 0, "");
    }

    private static LocalDate date(String text, LocalDate today) {
        try {
            return text == null ? today : LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new WrongUse("'" + text + "' is no date -> such as 2027-08-16; nothing was booked");
        }
    }
}
