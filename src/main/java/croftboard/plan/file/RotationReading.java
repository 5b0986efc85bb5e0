package croftboard.plan.file;

import croftboard.plan.Rotation;
import java.util.function.Function;

/** What became of reading a rotation. */
public sealed interface RotationReading {
    <T> T fold(Function<Read, T> read, Function<Absent, T> absent, Function<Refused, T> refused);

    record Read(Rotation rotation) implements RotationReading {
        @Override
        public <T> T fold(Function<Read, T> read, Function<Absent, T> absent, Function<Refused, T> refused) {
            return read.apply(this);
        }
    }

    /** There is no such rotation. @param why what was looked for and what is there */
    record Absent(String why) implements RotationReading {
        @Override
        public <T> T fold(Function<Read, T> read, Function<Absent, T> absent, Function<Refused, T> refused) {
            return absent.apply(this);
        }
    }

    /** There is a file, but it is no rotation of a format known here. @param why with the place in the file */
    record Refused(String why) implements RotationReading {
        @Override
        public <T> T fold(Function<Read, T> read, Function<Absent, T> absent, Function<Refused, T> refused) {
            return refused.apply(this);
        }
    }
}
