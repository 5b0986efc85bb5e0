package croftboard.plan;

import java.util.List;

/**
 * What a plan kept of its week in a rotation.
 *
 * @param rotation its weeks
 * @param possible slots whose dish of the rotation could still stand there
 * @param kept of them, where it does
 * @param changes the others, and those that could not stay, each with its reason
 * @param note why so few stay; empty when enough do
 */
public record RotationKept(String rotation, int possible, int kept, List<Rotation.Swap> changes, String note) { }
