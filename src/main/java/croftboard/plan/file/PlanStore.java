package croftboard.plan.file;

import croftboard.book.Book;
import croftboard.measure.IsoWeek;
import croftboard.plan.Given;
import croftboard.plan.WeekPlan;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The folder {@code plans/} of a book: {@code plans/2027-W33/1.json}, {@code 2.json} and so on, and beside them the file
 * {@code current}. Versions are kept and never overwritten; several processes may write at once and get different
 * numbers; a process killed at any moment leaves no half file. All methods throw {@link UncheckedIOException} with a
 * sentence when the disk fails.
 */
public final class PlanStore {
    private final Path folder;

    /** @param book the book's folder; {@code plans/} is made in it at the first write */
    public PlanStore(Path book) {
        folder = book.resolve("plans");
    }

    /** Keeps a plan as the week's next version, drafted, and makes it the current one. @return its number, from 1 */
    public int writeDraft(WeekPlan plan) {
        return writing(plan.week(), register -> {
            int version = 1 + numbers(plan.week()).stream().mapToInt(n -> n).max().orElse(0);
            while (!WholeFile.create(file(plan.week(), version), PlanFile.write(plan))) {
                version++;
            }
            WholeFile.replace(registerFile(plan.week()), register.drafted(version).text());
            return version;
        });
    }

    /**
     * What was there when a repair began.
     *
     * @param posted the version that people worked from; empty: none
     * @param newest the number of the newest version; 0: none
     */
    public record Seen(OptionalInt posted, int newest) { }

    public Seen seen(IsoWeek week) {
        return new Seen(postedVersion(week), newest(week));
    }

    private int newest(IsoWeek week) {
        return numbers(week).stream().mapToInt(n -> n).max().orElse(0);
    }

    /**
     * Keeps a changed plan as the next version, unless somebody posted or wrote another one since.
     *
     * @return its number; empty: somebody was faster, nothing was written
     */
    public OptionalInt writeRevision(WeekPlan plan, Seen seen) {
        return writing(plan.week(), register -> {
            int version = 1 + seen.newest();
            if (!register.posted().equals(seen.posted()) || newest(plan.week()) != seen.newest()
                    || !WholeFile.create(file(plan.week(), version), PlanFile.write(plan))) {
                return OptionalInt.empty();
            }
            WholeFile.replace(registerFile(plan.week()), register.drafted(version).text());
            return OptionalInt.of(version);
        });
    }

    /** Makes a version the one that people work from, and the current one; never one in which a must is broken. */
    public Posting post(IsoWeek week, int version) {
        return read(week, version).fold(
                read -> read.plan().complete() ? post(read.plan(), version)
                        : new Posting.Incomplete(read.plan().missing()),
                absent -> new Posting.NoPlan(absent.why()), refused -> new Posting.NoPlan(refused.why()));
    }

    private Posting post(WeekPlan plan, int version) {
        return writing(plan.week(), register -> {
            WholeFile.replace(registerFile(plan.week()), register.posted(version).text());
            return new Posting.Posted(version);
        });
    }

    /** The version that the week's name alone means: the one written or posted last. */
    public OptionalInt current(IsoWeek week) {
        return register(week).current();
    }

    /** The version that people work from. */
    public OptionalInt postedVersion(IsoWeek week) {
        return register(week).posted();
    }

    /** All versions of a week, ascending. */
    public List<PlanVersion> versions(IsoWeek week) {
        Register register = register(week);
        return numbers(week).stream().map(n -> new PlanVersion(n, register.statusOf(n))).toList();
    }

    public PlanReading read(PlanRef ref) {
        return ref.version().isPresent() ? read(ref.week(), ref.version().getAsInt()) : read(ref.week());
    }

    /** The current plan of a week. */
    public PlanReading read(IsoWeek week) {
        OptionalInt current = current(week);
        return current.isPresent() ? read(week, current.getAsInt())
                : new PlanReading.Absent("there is no plan of " + week + " in " + folder + " yet");
    }

    public PlanReading read(IsoWeek week, int version) {
        Path file = file(week, version);
        try {
            return named(file, PlanFile.read(Files.readString(file)), week);
        } catch (NoSuchFileException e) {
            String there = versions(week).stream().map(v -> week + "@" + v.number()).collect(Collectors.joining(", "));
            return new PlanReading.Absent("there is no plan " + week + "@" + version + "; "
                    + (there.isEmpty() ? "there is none of that week" : "there are " + there));
        } catch (CharacterCodingException e) {
            return new PlanReading.Refused(file + " is no plan: the file is no UTF-8 text");
        } catch (IOException e) {
            throw VersionFiles.failed(file, "read", e);
        }
    }

    /** The reading with the file's name before the sentence; a plan of another week does not belong there. */
    private static PlanReading named(Path file, PlanReading reading, IsoWeek week) {
        return reading.fold(
                read -> read.plan().week().equals(week) ? read
                        : new PlanReading.Refused(file + " holds a plan of " + read.plan().week() + ", not of " + week),
                absent -> absent, refused -> new PlanReading.Refused(file + " is no plan: " + refused.why()));
    }

    /** The posted plan of a week, if there is one. @throws IllegalStateException when it cannot be read, in words */
    public Optional<WeekPlan> posted(IsoWeek week) {
        OptionalInt version = postedVersion(week);
        return version.isEmpty() ? Optional.empty() : read(week, version.getAsInt()).fold(
                read -> Optional.of(read.plan()),
                absent -> {
                    throw new IllegalStateException(absent.why());
                },
                refused -> {
                    throw new IllegalStateException(refused.why());
                });
    }

    /** What posted plans of neighbouring weeks have already decided for a week. */
    public Given given(IsoWeek week, Book book) {
        return Neighbours.given(week, book, this::posted);
    }

    /** Weeks that have a posted plan, ascending. */
    public List<IsoWeek> postedWeeks() {
        List<IsoWeek> weeks = new java.util.ArrayList<>();
        try (DirectoryStream<Path> folders = Files.newDirectoryStream(folder)) {
            for (Path f : folders) {
                IsoWeek.parse(f.getFileName().toString()).filter(w -> postedVersion(w).isPresent()).ifPresent(weeks::add);
            }
        } catch (NoSuchFileException e) {
            return List.of();
        } catch (IOException e) {
            throw VersionFiles.failed(folder, "read", e);
        }
        weeks.sort(null);
        return List.copyOf(weeks);
    }

    private Path file(IsoWeek week, int version) {
        return folder.resolve(week.toString()).resolve(version + ".json");
    }

    private Path registerFile(IsoWeek week) {
        return folder.resolve(week.toString()).resolve("current");
    }

    private Register register(IsoWeek week) {
        Path file = registerFile(week);
        try {
            return Register.of(Files.readString(file));
        } catch (NoSuchFileException e) {
            return Register.NEW;
        } catch (Unreadable e) {
            throw new IllegalStateException(file + " cannot be understood: " + e.getMessage());
        } catch (IOException e) {
            throw VersionFiles.failed(file, "read", e);
        }
    }

    private TreeSet<Integer> numbers(IsoWeek week) {
        return VersionFiles.numbers(folder.resolve(week.toString()));
    }

    private interface Writing<T> {
        T run(Register register) throws IOException;
    }

    private <T> T writing(IsoWeek week, Writing<T> work) {
        Path of = folder.resolve(week.toString());
        try {
            WholeFile.makeFolder(of);
            StoreLock lock = StoreLock.on(folder);
            try {
                WholeFile.clean(of);
                return work.run(register(week));
            } finally {
                lock.free();
            }
        } catch (IOException e) {
            throw VersionFiles.failed(of, "written", e);
        }
    }
}
