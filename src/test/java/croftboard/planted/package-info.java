/** Weeks whose best plan is known because it was there first; what is around it was priced so that nothing passes it. */
package croftboard.planted;
