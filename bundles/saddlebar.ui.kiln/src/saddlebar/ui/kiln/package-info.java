/** The Kiln bench: chart, schedule, shelf and firings. Logic stands apart from widgets. */
package saddlebar.ui.kiln;
