package croftboard.book;

import java.util.List;
import java.util.Optional;

/** Where and how somebody is reached. @param address lines of it; none: not known */
public record Contact(Optional<String> person, List<String> address, Optional<String> phone, Optional<String> email) {
    public static final Contact NONE = new Contact(Optional.empty(), List.of(), Optional.empty(), Optional.empty());
}
