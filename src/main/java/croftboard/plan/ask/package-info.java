/**
 * Questions about a plan: what differs, why this, why not that, what clashes, what more of a scarce thing would be worth,
 * what a failure would cost. Each is a plan under changed facts, reckoned anew; nothing here touches a plan on disk.
 */
package croftboard.plan.ask;
