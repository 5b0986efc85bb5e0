/**
 * The commands: each parses, calls one use case, and hands its record to a screen. Results go to stdout, progress and
 * faults to stderr. Exit codes are those of {@link croftboard.cli.Exit}. The only room that knows picocli, a terminal,
 * the clock and the environment; may import every other room.
 */
package croftboard.cli;
