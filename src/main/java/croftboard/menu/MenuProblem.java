package croftboard.menu;

import croftboard.need.WeekProblem;

/** What a search works on: the week, the prices that bought food counts for, and which changes make sense. */
record MenuProblem(WeekProblem week, PurchasePrices prices, MoveTable moves) {
    MenuProblem(WeekProblem week, PurchasePrices prices) {
        this(week, prices, new MoveTable(week));
    }
}
