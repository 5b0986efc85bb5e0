package croftboard.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Lines as the three solvers printed them. */
class SolverLogTest {
    @Test
    void scip_linesOfHeuristicsAndNodes() {
        assertThat(SolverLog.steps(List.of(
                " time | node  | left  |LP iter|LP it/n|mem/heur|mdpt |vars |cons |rows |cuts |sepa|confs|strbr|"
                + "  dualbound   | primalbound  |  gap   | compl. ",
                "t 0.4s|     1 |     0 |     0 |     - | trivial|   0 |2478 |1314 |   0 |   0 |  0 |   0 |   0 |"
                + " 8.593740e+07 |-1.232782e+07 |    Inf | unknown",
                "p 1.9s|     1 |     0 |   143 |     - |  clique|   0 |2478 |1314 |1314 |   0 |  0 |   0 |   0 |"
                + " 8.593740e+07 | 1.678389e+06 |5020.23%| unknown",
                "  3.0s|     1 |     0 | 10823 |     - |    38M |   0 |2478 |1314 |1314 |   0 |  0 |   0 |   0 |"
                + " 1.876474e+06 | 1.678389e+06 |  11.80%| unknown")))
                .containsExactly(new SolverLog.Step(.4, -12327820), new SolverLog.Step(1.9, 1678389));
    }

    @Test
    void highs_linesWithAndWithoutASource() {
        assertThat(SolverLog.steps(List.of(
                " J       0       0         0   0.00%   inf             -870000            Large        0      0      0"
                + "         0     0.4s",
                " C       0       0         0   0.00%   1872623.594465  1450236.69781     29.13%      542     82      0"
                + "      2382     1.1s",
                "         0       0         0   0.00%   1872623.594465  1450236.69781     29.13%      542     82      0"
                + "      2400     1.2s"))).containsExactly(new SolverLog.Step(.4, -870000),
                        new SolverLog.Step(1.1, 1450236.69781));
        assertThat(SolverLog.steps(List.of(
                "Src  Proc. InQueue |  Leaves   Expl. | BestBound       BestSol              Gap |   Cuts   InLp"
                + " Confl. | LpIters     Time"))).isEmpty();
    }

    @Test
    void sat_linesOfSolutions() {
        assertThat(SolverLog.steps(List.of("#Bound   0.72s best:-inf  next:[-11691464,84052562.7] initial_domain",
                "#1       0.74s best:-870000 next:[-870000,84052562.7] fj_restart(batch:1 lin{mvs:12 evals:686})",
                "#2       1.15s best:1398686.5 next:[1398686.5,84052562.7] rnd_var_lns (d=5.00e-01 s=3 t=0.10)")))
                .containsExactly(new SolverLog.Step(.74, -870000), new SolverLog.Step(1.15, 1398686.5));
    }
}
