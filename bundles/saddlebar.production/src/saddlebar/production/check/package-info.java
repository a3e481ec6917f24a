/** Looking at a commission without making anything: its problems, and where everything stands. */
package saddlebar.production.check;
