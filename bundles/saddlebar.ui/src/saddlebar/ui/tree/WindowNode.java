package saddlebar.ui.tree;

/** A window of the commission by its name; its file is read when it is first looked into. */
public record WindowNode(String name) {
}
