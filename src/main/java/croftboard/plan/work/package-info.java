/**
 * What a plan makes the kitchen do, seen from the bench: makings by day and station with all that goes into them, the order
 * to take them in, what is fetched for them, and which batch, delivery and counted food stands behind which dish. Computed
 * from the plan and today's book; it decides nothing. Screens and sheets share it.
 */
package croftboard.plan.work;
