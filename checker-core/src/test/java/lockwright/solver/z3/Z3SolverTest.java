package lockwright.solver.z3;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import lockwright.solver.Solver;
import lockwright.solver.Solver.Answer;
import org.junit.jupiter.api.Test;

class Z3SolverTest {
  @Test
  void a_value_is_that_of_the_last_check_and_none_is_told_after_another_clause() {
    try (Z3Solvers solvers = Z3Solvers.unlimited();
        Solver solver = solvers.open()) {
      int a = solver.variable();
      int b = solver.variable();
      solver.clause(a, b);
      assertThat(solver.check(-a)).isEqualTo(Answer.SATISFIABLE);
      assertThat(solver.value(a)).isFalse();
      assertThat(solver.value(b)).isTrue();
      assertThat(solver.check(-b)).isEqualTo(Answer.SATISFIABLE);
      assertThat(solver.value(a)).isTrue();
      solver.clause(-a);
      assertThatIllegalStateException().isThrownBy(() -> solver.value(b));
      assertThat(solver.check(-b)).isEqualTo(Answer.UNSATISFIABLE);
      assertThatIllegalStateException().isThrownBy(() -> solver.value(a));
    }
  }
}
