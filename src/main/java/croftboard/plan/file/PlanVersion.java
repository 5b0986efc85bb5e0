package croftboard.plan.file;

/** One kept version of a week's plan. @param number from 1 */
public record PlanVersion(int number, Status status) {
    /** POSTED: people work from it, or did before a later one was posted. */
    public enum Status { DRAFTED, POSTED }
}
