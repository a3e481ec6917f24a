/** The commission as a tree: windows, panels, layers, stencils, pieces; sheets; the studio. Each node says in words where it stands in the making. */
package saddlebar.ui.tree;
