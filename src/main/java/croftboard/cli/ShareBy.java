package croftboard.cli;

import java.util.Locale;

/** Into what the money of a share is divided. */
enum ShareBy {
    VENDOR, CROP, DISH, MONTH;

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
