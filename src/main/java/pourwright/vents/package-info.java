/**
 * What to do about trapped air: {@link pourwright.vents.VentAdvisor} takes the answers of a job, and a mesh where there is one,
 * and gives for every pocket one decision with the rule that made it. Geometry finds the pockets, the advisor is consulted once
 * for each of them, and the rules of {@code rules/mould/} decide. Pure functions: whoever calls reads the mesh.
 */
package pourwright.vents;
