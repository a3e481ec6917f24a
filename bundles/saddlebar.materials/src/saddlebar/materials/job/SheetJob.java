package saddlebar.materials.job;

/** Sheets of one material and paper that stencils are printed on. */
public record SheetJob(String material, String paper, int sheets) {
}
