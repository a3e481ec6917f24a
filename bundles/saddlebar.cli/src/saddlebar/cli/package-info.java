/** The command line: one class a command, one handler of what rises. */
package saddlebar.cli;
