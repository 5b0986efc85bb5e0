package croftboard.menu;

import croftboard.need.WeekProblem;

/** What a search works on: the week and the prices that bought food counts for. */
record MenuProblem(WeekProblem week, PurchasePrices prices) { }
