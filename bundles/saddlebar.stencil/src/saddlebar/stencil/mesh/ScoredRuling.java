package saddlebar.stencil.mesh;

/**
 * A ruling and its angle, with the worst of its beats as the eye gets it.
 *
 * @param lpi      cells an inch
 * @param angleDeg angle to the threads of the mesh
 * @param score    contrast times the eye's sensitivity over its best; lower is better, 0.005 would just show if paint did not flow
 */
public record ScoredRuling(double lpi, double angleDeg, double score) {
}
