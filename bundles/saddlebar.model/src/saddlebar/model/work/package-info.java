/** Progress and stopping of long work, without any user interface. */
package saddlebar.model.work;
