package croftboard.cli;

import croftboard.measure.Amount;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.paper.SheetKind;
import croftboard.paper.file.PaperFormat;
import croftboard.plan.file.PlanRef;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Words of the command line as values; what is none of them is told with what would be right. */
final class Typed {
    private Typed() { }

    static final class Week implements ITypeConverter<IsoWeek> {
        @Override
        public IsoWeek convert(String text) {
            return IsoWeek.parse(text).orElseThrow(() -> new TypeConversionException(
                    "'" + text + "' is no week -> a year and a week of it, such as 2027-W33"));
        }
    }

    static final class Plan implements ITypeConverter<PlanRef> {
        @Override
        public PlanRef convert(String text) {
            return PlanRef.parse(text).orElseThrow(() -> new TypeConversionException(
                    "'" + text + "' is no plan -> a week such as 2027-W33, or one version of it such as 2027-W33@2"));
        }
    }

    static final class Weekday implements ITypeConverter<java.time.DayOfWeek> {
        @Override
        public java.time.DayOfWeek convert(String text) {
            for (java.time.DayOfWeek day : java.time.DayOfWeek.values()) {
                if (day.name().substring(0, 3).equalsIgnoreCase(text.trim())) {
                    return day;
                }
            }
            throw new TypeConversionException("'" + text + "' is no day -> mon, tue, wed, thu, fri, sat or sun");
        }
    }

    static final class Moment implements ITypeConverter<java.time.LocalDateTime> {
        @Override
        public java.time.LocalDateTime convert(String text) {
            try {
                return java.time.LocalDateTime.parse(text.trim().replace(' ', 'T'));
            } catch (java.time.format.DateTimeParseException e) {
                throw new TypeConversionException("'" + text + "' is no moment -> a day and an hour, such as 2027-08-17T07:00");
            }
        }
    }

    static final class Time implements ITypeConverter<Duration> {
        private static final Pattern FORM = Pattern.compile("([1-9]\\d{0,4}) ?(s|sec|min|m|h)");
        private static final Duration MOST = Duration.ofHours(12);

        @Override
        public Duration convert(String text) {
            Matcher m = FORM.matcher(text.trim());
            if (!m.matches()) {
                throw wrong(text);
            }
            long count = Long.parseLong(m.group(1));
            Duration time = switch (m.group(2)) {
                case "s", "sec" -> Duration.ofSeconds(count);
                case "h" -> Duration.ofHours(count);
                default -> Duration.ofMinutes(count);
            };
            if (time.compareTo(MOST) > 0) {
                throw wrong(text);
            }
            return time;
        }

        private static TypeConversionException wrong(String text) {
            return new TypeConversionException("'" + text + "' is no time to plan -> such as 20s, 5min, at most 12h");
        }
    }

    /** One of the words of an enum, in any case. */
    private static <E extends Enum<E>> E oneOf(E[] all, String text) {
        for (E e : all) {
            if (e.toString().equalsIgnoreCase(text)) {
                return e;
            }
        }
        throw new TypeConversionException("'" + text + "' is none of them -> " + Arrays.stream(all).map(E::toString)
                .collect(Collectors.joining(", ")));
    }

    static final class PartWord implements ITypeConverter<Part> {
        @Override
        public Part convert(String text) {
            return oneOf(Part.values(), text);
        }
    }

    static final class FormatWord implements ITypeConverter<Format> {
        @Override
        public Format convert(String text) {
            return oneOf(Format.values(), text);
        }
    }

    static final class Times implements ITypeConverter<Ratio> {
        @Override
        public Ratio convert(String text) {
            return Amount.number(text.trim()).filter(n -> n.signum() > 0).orElseThrow(() -> new TypeConversionException(
                    "'" + text + "' is no number above 0 -> such as 2, 1.5, 1/2 or 1-1/2"));
        }
    }

    static final class Heads implements ITypeConverter<Integer> {
        @Override
        public Integer convert(String text) {
            try {
                return Integer.valueOf(text.trim());
            } catch (NumberFormatException e) {
                throw new TypeConversionException("'" + text + "' is no head count -> a whole number, such as 165");
            }
        }
    }

    static final class PaperWord implements ITypeConverter<PaperFormat> {
        @Override
        public PaperFormat convert(String text) {
            return oneOf(PaperFormat.values(), text);
        }
    }

    static final class Sheets implements ITypeConverter<SheetKind> {
        @Override
        public SheetKind convert(String text) {
            return oneOf(SheetKind.values(), text.trim());
        }
    }

    static final class Servings implements ITypeConverter<Integer> {
        private static final int MOST = 500;

        @Override
        public Integer convert(String text) {
            if (!text.trim().matches("\\d{1,3}") || Integer.parseInt(text.trim()) < 1 || Integer.parseInt(text.trim()) > MOST) {
                throw new TypeConversionException("'" + text + "' is no number of servings -> 1 to " + MOST);
            }
            return Integer.parseInt(text.trim());
        }
    }

    /** A weekday of the week that is meant, or a date. */
    record DayWord(Optional<DayOfWeek> weekday, Optional<LocalDate> date) {
        LocalDate in(IsoWeek week) {
            return date.orElseGet(() -> week.day(weekday.orElseThrow()));
        }
    }

    static final class Day implements ITypeConverter<DayWord> {
        @Override
        public DayWord convert(String text) {
            for (DayOfWeek day : DayOfWeek.values()) {
                if (day.name().substring(0, 3).equalsIgnoreCase(text.trim())) {
                    return new DayWord(Optional.of(day), Optional.empty());
                }
            }
            try {
                return new DayWord(Optional.empty(), Optional.of(LocalDate.parse(text.trim())));
            } catch (DateTimeException e) {
                throw new TypeConversionException("'" + text + "' is no day -> mon tue wed thu fri sat sun, or a date such as 2027-08-19");
            }
        }
    }
}
