/** Measures the program and writes docs/benchmarks.md; run by {@code ./bench}. */
package croftboard.bench;
