package croftboard.plan;

import croftboard.book.Book;

/** What people call the things of a week. */
interface Names {
    /** Where nobody reads them. */
    Names IDS = new Names() {
        @Override
        public String recipe(String id) {
            return id;
        }

        @Override
        public String vendor(String id) {
            return id;
        }
    };

    String recipe(String id);

    String vendor(String id);

    static Names of(Book book) {
        return new Names() {
            @Override
            public String recipe(String id) {
                return book.recipes().containsKey(id) ? book.recipe(id).name() : "what is already made";
            }

            @Override
            public String vendor(String id) {
                return book.vendor(id).name();
            }
        };
    }
}
