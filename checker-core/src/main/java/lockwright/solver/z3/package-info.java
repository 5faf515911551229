/** The solver port on Z3, the only room that imports it. */
package lockwright.solver.z3;
