package croftboard.cli;

import croftboard.plan.WeekPlan;
import picocli.CommandLine.IVersionProvider;

/** The version line: from the jar's manifest where there is one. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        String version = Version.class.getPackage().getImplementationVersion();
        return new String[] {"croftboard " + (version == null ? "0.1.0" : version) + ", plan format " + WeekPlan.FORMAT};
    }
}
