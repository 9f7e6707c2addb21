/**
 * The course for new staff: experiments that are computed while the learner looks on, and exercises drawn from cases, varied,
 * and marked by the advisor itself. What comes out depends on the lesson, the cases and the draw alone.
 */
package pourwright.teach;
