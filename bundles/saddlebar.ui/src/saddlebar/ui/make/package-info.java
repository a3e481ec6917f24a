/** Long work on the commission: production takes it over for as long as that lasts, watched and stopped in the Progress view. */
package saddlebar.ui.make;
