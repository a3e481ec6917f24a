/**
 * The benches and the Easel as the workbench shows it. The Easel is an editor, one a window: several windows may lie side by side, each with its tab
 * and its mark of what is unsaved, and every bench has it, since all benches share the place of editors.
 */
package saddlebar.ui.bench;
