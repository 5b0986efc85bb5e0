package croftboard.plan.file;

import croftboard.book.Book;
import croftboard.measure.IsoWeek;
import croftboard.measure.WeekSpan;
import croftboard.plan.Given;
import croftboard.plan.Rotation;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The folder {@code plans/rotations/} of a book: {@code 2027-W36..2027-W39/1.json}, {@code 2.json} and so on, and beside
 * them the file {@code current}. Versions are kept and never overwritten. Rotations in force never overlap: one that is
 * withdrawn has a file {@code withdrawn} beside its versions and counts no more, but can still be read. All methods throw
 * {@link UncheckedIOException} with a sentence when the disk fails.
 */
public final class RotationStore {
    private static final String WITHDRAWN = "withdrawn";
    private final Path folder;
    private final PlanStore plans;

    /** @param book the book's folder */
    public RotationStore(Path book) {
        plans = new PlanStore(book);
        folder = book.resolve("plans").resolve("rotations");
    }

    /** Rotations in force that have a week in common with these, other than one of exactly these weeks. */
    public List<WeekSpan> overlapping(WeekSpan span) {
        return inForce().stream().filter(s -> s.overlaps(span) && !s.equals(span)).toList();
    }

    /**
     * Keeps a rotation as the next version of its weeks, whole or not at all.
     *
     * @param instead rotations that are withdrawn for it
     * @return its number, from 1
     * @throws IllegalStateException in words when it overlaps one that is not withdrawn
     */
    public int write(Rotation rotation, List<WeekSpan> instead) {
        String text = RotationFile.write(rotation);
        Path of = folder.resolve(rotation.span().toString());
        try {
            WholeFile.makeFolder(of);
            StoreLock lock = StoreLock.on(folder);
            try {
                List<WeekSpan> left = new ArrayList<>(overlapping(rotation.span()));
                left.removeAll(instead);
                if (!left.isEmpty()) {
                    throw new IllegalStateException("the rotation " + left.get(0) + " has weeks of " + rotation.span());
                }
                WholeFile.clean(of);
                int version = 1 + VersionFiles.numbers(of).stream().mapToInt(n -> n).max().orElse(0);
                while (!WholeFile.create(of.resolve(version + ".json"), text)) {
                    version++;
                }
                WholeFile.replace(of.resolve("current"), Register.NEW.drafted(version).text());
                Files.deleteIfExists(of.resolve(WITHDRAWN));
                for (WeekSpan old : instead) {
                    WholeFile.replace(folder.resolve(old.toString()).resolve(WITHDRAWN), "for " + rotation.span() + "\n");
                }
                return version;
            } finally {
                lock.free();
            }
        } catch (IOException e) {
            throw VersionFiles.failed(of, "written", e);
        }
    }

    /**
     * What plans outside these weeks have decided for one of them: posted plans, and where there is none a rotation in
     * force. What they leave is there for the first week; later weeks have it from the ones before.
     */
    public Given given(IsoWeek week, Book book, WeekSpan span) {
        Given all = Neighbours.given(week, book, w -> span.holds(w) ? Optional.empty() : plans.posted(w)
                .or(() -> covering(w).flatMap(r -> r.week(w)).map(Rotation.Week::plan)));
        return week.equals(span.first()) ? all : new Given(all.orders(), List.of(), all.served());
    }

    /** Every dish that a posted plan has ever served; empty: there is no posted plan. */
    public Optional<Set<String>> served() {
        List<IsoWeek> weeks = plans.postedWeeks();
        Set<String> dishes = new TreeSet<>();
        weeks.forEach(w -> plans.posted(w).ifPresent(p -> dishes.addAll(p.choices().values())));
        return weeks.isEmpty() ? Optional.empty() : Optional.of(dishes);
    }

    /** Rotations that are not withdrawn, by their first week. */
    public List<WeekSpan> inForce() {
        return all().stream().filter(s -> !Files.exists(folder.resolve(s.toString()).resolve(WITHDRAWN))).toList();
    }

    private List<WeekSpan> all() {
        TreeSet<WeekSpan> spans = new TreeSet<>();
        try (DirectoryStream<Path> folders = Files.newDirectoryStream(folder)) {
            for (Path f : folders) {
                WeekSpan.parse(f.getFileName().toString()).filter(s -> !VersionFiles.numbers(f).isEmpty()).ifPresent(spans::add);
            }
        } catch (NoSuchFileException e) {
            return List.of();
        } catch (IOException e) {
            throw VersionFiles.failed(folder, "read", e);
        }
        return List.copyOf(spans);
    }

    /** The rotation in force that plans a week; empty: none. @throws IllegalStateException when it cannot be read, in words */
    public Optional<Rotation> covering(IsoWeek week) {
        return inForce().stream().filter(s -> s.holds(week)).findFirst().map(s -> read(new RotationRef(s, OptionalInt.empty()))
                .fold(RotationReading.Read::rotation, absent -> {
                    throw new IllegalStateException(absent.why());
                }, refused -> {
                    throw new IllegalStateException(refused.why());
                }));
    }

    public OptionalInt current(WeekSpan span) {
        Path file = folder.resolve(span.toString()).resolve("current");
        try {
            return Register.of(Files.readString(file)).current();
        } catch (NoSuchFileException e) {
            return OptionalInt.empty();
        } catch (Unreadable e) {
            throw new IllegalStateException(file + " cannot be understood: " + e.getMessage());
        } catch (IOException e) {
            throw VersionFiles.failed(file, "read", e);
        }
    }

    /** A withdrawn one can be read too. */
    public RotationReading read(RotationRef ref) {
        OptionalInt version = ref.version().isPresent() ? ref.version() : current(ref.span());
        if (version.isEmpty()) {
            String there = all().stream().map(WeekSpan::toString).collect(Collectors.joining(", "));
            return new RotationReading.Absent("there is no rotation " + ref.span() + "; "
                    + (there.isEmpty() ? "there is none yet" : "there are " + there));
        }
        Path file = folder.resolve(ref.span().toString()).resolve(version.getAsInt() + ".json");
        try {
            return named(file, RotationFile.read(Files.readString(file)), ref.span());
        } catch (NoSuchFileException e) {
            return new RotationReading.Absent("there is no version " + version.getAsInt() + " of the rotation " + ref.span()
                    + "; there are " + VersionFiles.numbers(file.getParent()));
        } catch (CharacterCodingException e) {
            return new RotationReading.Refused(file + " is no rotation: the file is no UTF-8 text");
        } catch (IOException e) {
            throw VersionFiles.failed(file, "read", e);
        }
    }

    private static RotationReading named(Path file, RotationReading reading, WeekSpan span) {
        return reading.fold(read -> read.rotation().span().equals(span) ? read
                : new RotationReading.Refused(file + " holds a rotation of " + read.rotation().span() + ", not of " + span),
                absent -> absent, refused -> new RotationReading.Refused(file + " is no rotation: " + refused.why()));
    }
}
