/** What is shown while no commission lies open: what to do next. */
package saddlebar.ui.welcome;
