/** Openings of windows: from what was measured to what the commission keeps. */
package saddlebar.production.opening;
