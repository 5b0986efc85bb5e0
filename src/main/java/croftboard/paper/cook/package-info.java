/** What cooks work from: prep, pull and batch sheets, production sheets, and the function sheet of an event. */
package croftboard.paper.cook;
