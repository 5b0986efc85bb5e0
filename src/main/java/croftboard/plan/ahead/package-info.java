/** What is read out of weeks that are planned ahead: who finds a main, what growers are told, what a season asks for. */
package croftboard.plan.ahead;
