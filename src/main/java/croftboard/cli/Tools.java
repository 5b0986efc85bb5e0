package croftboard.cli;

/** What the commands call, put together once in {@link Wiring}. */
record Tools(BookSource books, PlanService planner, PlanCheck check) { }
