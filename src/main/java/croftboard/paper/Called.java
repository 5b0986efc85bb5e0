package croftboard.paper;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Kitchen;
import croftboard.book.Recipe;
import croftboard.book.Vendor;
import java.util.Optional;

/** What people call the things behind a plan's ids. An id that today's book no longer has stands for itself. */
public record Called(Book book) {
    public String item(String id) {
        Ingredient ingredient = book.ingredients().get(id);
        return ingredient == null ? recipe(id) : ingredient.name();
    }

    public String recipe(String id) {
        return Optional.ofNullable(book.recipes().get(id)).map(Recipe::name).orElse(id);
    }

    public String vendor(String id) {
        return Optional.ofNullable(book.vendors().get(id)).map(Vendor::name).orElse(id);
    }

    public String line(String id) {
        return book.kitchen().lines().stream().filter(l -> l.id().equals(id)).map(Kitchen.ServiceLine::name)
                .findFirst().orElse(id);
    }

    public String station(String id) {
        return book.kitchen().stations().stream().filter(s -> s.id().equals(id)).map(Kitchen.Station::name)
                .findFirst().orElse(id);
    }
}
