package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.Vendor;
import croftboard.cli.screen.Page;
import croftboard.ledger.Entry;
import croftboard.ledger.Receipt;
import croftboard.ledger.Unread;
import croftboard.ledger.VendorGoods;
import croftboard.ledger.file.Intake;
import croftboard.ledger.file.InvoiceFile;
import croftboard.ledger.file.Memory;
import croftboard.ledger.file.Table;
import croftboard.ledger.file.UblInvoice;
import croftboard.plan.file.PlanRef;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes deliveries into the ledger: a vendor's file, the week's orders, or one typed line. */
@Command(name = "receive", sortOptions = false, description = "Book what came: a vendor's invoice (CSV, XLSX, UBL), the orders of a week with"
        + " what was different at the door, or one typed line (docs/ledger.md has the forms).",
        exitCodeListHeading = Exit.HEADING, exitCodeList = {Exit.DONE_SAY, Exit.OUR_FAULT_SAY,
            "2:wrong use, or the file has faults; nothing was booked"})
final class ReceiveCommand implements Callable<Integer> {
    @Parameters(arity = "0..*", paramLabel = "FILE | LINE", description = "a vendor's file, or one line such as"
            + " \"hollow-brook 3 leek at $$18.50 41F\"")
    private List<String> words = new ArrayList<>();

    @Option(names = "--from-orders", paramLabel = "WEEK", converter = Typed.Plan.class, description = "the orders of the posted plan that"
            + " were to come until today and are not booked yet; as ordered, but for what the next options say")
    private PlanRef week;

    @Option(names = "--vendor", paramLabel = "V", description = "this vendor's file, or its orders only")
    private String vendor;

    @Option(names = "--delivery", paramLabel = "DATE", description = "day of the delivery: for a file without dates, or orders of that day only")
    private LocalDate delivery;

    @Mixin
    private DoorOptions door;
    @Option(names = "--unread", description = "only list what came instead of something else and whose label nobody has read")
    private boolean unread;

    @Mixin
    private FileBooking booking;
    @Mixin
    private BookAt at;
    @Spec
    private CommandSpec spec;
    private final Setting setting;
    private final Tools tools;

    ReceiveCommand(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    @Override
    public Integer call() {
        boolean typed = !words.isEmpty();
        if ((typed ? 1 : 0) + (week != null ? 1 : 0) + (unread ? 1 : 0) != 1) {
            throw new WrongUse("what came? -> croftboard receive FILE, receive --from-orders WEEK, receive \"VENDOR 3 ITEM at $18.50\","
                    + " or receive --unread");
        }
        Book book = at.read(tools.books());
        if (vendor != null && !book.vendors().containsKey(vendor)) {
            throw new WrongUse("there is no vendor '" + vendor + "' -> one of " + String.join(", ", book.vendors().keySet()));
        }
        if (week == null && !door.nothingSaid()) {
            throw new WrongUse("--came, --rejected, --instead, --price and --temp go with --from-orders WEEK");
        }
        PrintWriter out = spec.commandLine().getOut();
        int code = unread ? Exit.DONE : week != null ? orders(book) : file().isPresent() ? file(book, file().get(), out) : typed(book);
        if (booking.taking().format() == Format.TEXT && !booking.taking().dryRun()) {
            stillUnread(book, out);
        }
        return code;
    }

    private Optional<Path> file() {
        String one = words.get(0);
        try {
            boolean named = one.matches("(?i).*\\.(csv|xlsx|xml|txt|xls|pdf|tsv)");
            return words.size() == 1 && (named || Files.exists(Path.of(one))) ? Optional.of(Path.of(one)) : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    private int file(Book book, Path path, PrintWriter out) {
        byte[] content = TakingIn.content(path);
        Memory memory = TakingIn.memory(at.folder());
        Optional<UblInvoice.Invoice> ubl = UblInvoice.looksLike(content) ? Optional.of(ubl(path, content)) : Optional.empty();
        Table table = ubl.isPresent() ? ubl.get().table() : TakingIn.table(path, content);
        Vendor from = vendor(book, path, ubl);
        VendorGoods goods = new VendorGoods(book, from, memory.names(from.id()));
        Intake.Read read = FileBooking.good(path, InvoiceFile.read(table, booking.taking().columns(), ubl.isPresent() ? Map.of()
                : memory.columns(from.id()), goods, Optional.ofNullable(delivery)));
        if (ubl.isPresent()) {
            read = new Intake.Read(read.entries(), read.guesses(), memory.columns(from.id()));
        }
        var about = new FileBooking.File(book, at.folder(), setting, "receive", path, content, memory, from.id());
        var revising = new FileBooking.Revising<Receipt>(List.of(Receipt.class), r -> r.vendor().equals(from.id()), r -> List.of(r.date(), r.kind(),
                r.insteadOf().or(r::item).orElse(r.kind() == Receipt.Kind.FEE ? "" : r.words())), ReceiveCommand::kept, false);
        return booking.book(about, read, revising, goods.matching()::nearest, out);
    }

    private static UblInvoice.Invoice ubl(Path path, byte[] content) {
        UblInvoice.Reading reading = UblInvoice.read(content);
        if (reading instanceof UblInvoice.Refused refused) {
            throw new WrongUse(path.getFileName() + ": " + refused.why());
        }
        return (UblInvoice.Invoice) reading;
    }

    private Vendor vendor(Book book, Path path, Optional<UblInvoice.Invoice> ubl) {
        if (vendor != null) {
            return book.vendor(vendor);
        }
        String name = path.getFileName().toString();
        return book.vendors().values().stream().filter(v -> ubl.map(i -> v.name().equalsIgnoreCase(i.supplier()) || v.id().equals(i.supplier()))
                .orElse(name.startsWith(v.id()))).max(java.util.Comparator.comparingInt(v -> v.id().length())).orElseThrow(() -> new WrongUse(
                name + ": whose file is it? -> --vendor " + String.join(" | ", book.vendors().keySet())));
    }

    /** What the vendor's newer paper says, with what only the door knows. */
    private static Receipt kept(Receipt was, Receipt is) {
        boolean same = was.item().equals(is.item()) || was.insteadOf().isPresent() || is.item().isEmpty();
        return new Receipt(is.stamp(), is.date(), is.vendor(), was.order(), is.kind(), same ? was.words() : is.words(), same ? was.item() : is.item(),
                was.pack().or(is::pack), is.ordered().or(was::ordered), is.came(), was.rejected(), is.came().equals(was.came()) ? was.mg() : is.mg(),
                is.price(), is.cents(), was.insteadOf(), is.tenthsF().isPresent() ? is.tenthsF() : was.tenthsF(), same ? was.origin() : is.origin(),
                is.note().isEmpty() ? was.note() : is.note());
    }

    private int orders(Book book) {
        return new OrdersAtTheDoor(book, at, setting, booking.taking()).book(week, Optional.ofNullable(vendor), Optional.ofNullable(delivery),
                door.said(), spec, this::alarms);
    }

    private int typed(Book book) {
        return new TypedLine(book, at, setting, booking.taking()).book(String.join(" ", words), spec, this::alarms);
    }

    private List<String> alarms(Book book, List<Entry> entries) {
        RestingOn resting = new RestingOn(book, at.plans(), booking.taking().now(book, setting).toLocalDate());
        List<String> all = new ArrayList<>();
        entries.stream().filter(Receipt.class::isInstance).map(Receipt.class::cast).filter(r -> r.insteadOf().isPresent() && r.came().signum() > 0)
                .forEach(r -> all.addAll(resting.warnings(r)));
        return all;
    }

    private void stillUnread(Book book, PrintWriter out) {
        LocalDate today = booking.taking().now(book, setting).toLocalDate();
        List<Receipt> open = booking.taking().asking(at.folder(), setting, ledger -> Unread.labels(ledger, today.minusDays(60), today.plusDays(60)));
        Page page = setting.page();
        if (unread) {
            RestingOn resting = new RestingOn(book, at.plans(), today);
            open.forEach(r -> RestingOn.print(page, resting.warnings(r)));
            if (open.isEmpty()) {
                page.say("Every label of a substitute has been read.");
            }
        } else if (!open.isEmpty()) {
            page.say(open.size() + (open.size() == 1 ? " label is" : " labels are") + " still to be read: croftboard receive --unread");
        }
        out.print(page);
        out.flush();
    }
}
