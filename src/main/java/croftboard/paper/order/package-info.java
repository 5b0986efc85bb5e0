/** What goes to vendors: a purchase order for each vendor and delivery, and the week's calendar of cut-offs and deliveries. */
package croftboard.paper.order;
