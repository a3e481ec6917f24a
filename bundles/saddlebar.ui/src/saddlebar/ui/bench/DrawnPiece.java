package saddlebar.ui.bench;

import saddlebar.production.light.ScenePiece;

/** A piece that is drawn but has not been made yet: no model object stands for it. */
public record DrawnPiece(String windowName, ScenePiece piece) {
}
