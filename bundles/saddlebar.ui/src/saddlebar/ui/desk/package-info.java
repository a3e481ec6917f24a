/**
 * The commission that is open: {@link saddlebar.ui.desk.CommissionDesk} holds it and tells everybody, {@link saddlebar.ui.desk.Edits} changes it so
 * that every change can be taken back. Parts find the desk as a service of the workbench. All on the screen's thread.
 */
package saddlebar.ui.desk;
