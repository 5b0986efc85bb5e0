package croftboard.plan.ask;

/** One thing that has to be so in a week, by its number in the problem. */
sealed interface Fact {
    /** A dish has to stand in the slot: kept, always there, or an event's. */
    record Pin(int slot) implements Fact { }

    /** A dish does not come back within its gap. */
    record Gap() implements Fact { }

    /** There are only so many hands, or so much equipment, in a period. */
    record Hands(int resource, int period) implements Fact { }

    /** No more of an item can be had than is offered and in stock. */
    record Supply(int item) implements Fact { }

    /** An order is nothing or comes up to the vendor's minimum. */
    record Minimum(int delivery) implements Fact { }

    /** Packs are promised to be taken. */
    record Promised(int offer) implements Fact { }

    /** A component is made so long before its use and is good only so long. */
    record Life(int component) implements Fact { }

    /** A coverage promise is to be kept on a day. */
    record Kept(int rule, int day) implements Fact { }
}
