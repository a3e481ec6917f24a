/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Tone Mode</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * How drawn gray becomes coverage.
 * <!-- end-model-doc -->
 * @see saddlebar.model.commission.CommissionPackage#getToneMode()
 * @model
 * @generated
 */
public enum ToneMode implements Enumerator {
	/**
	 * The '<em><b>STRETCH</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From toneFrom to toneTo in linear light.
	 * <!-- end-model-doc -->
	 * @see #STRETCH_VALUE
	 * @generated
	 * @ordered
	 */
	STRETCH(0, "STRETCH", "stretch"),

	/**
	 * The '<em><b>LINEAR</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Code values as they stand.
	 * <!-- end-model-doc -->
	 * @see #LINEAR_VALUE
	 * @generated
	 * @ordered
	 */
	LINEAR(1, "LINEAR", "linear"),

	/**
	 * The '<em><b>CALIBRATED</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Stretched, then through the measured tone calibration.
	 * <!-- end-model-doc -->
	 * @see #CALIBRATED_VALUE
	 * @generated
	 * @ordered
	 */
	CALIBRATED(2, "CALIBRATED", "calibrated");

	/**
	 * The '<em><b>STRETCH</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From toneFrom to toneTo in linear light.
	 * <!-- end-model-doc -->
	 * @see #STRETCH
	 * @model literal="stretch"
	 * @generated
	 * @ordered
	 */
	public static final int STRETCH_VALUE = 0;

	/**
	 * The '<em><b>LINEAR</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Code values as they stand.
	 * <!-- end-model-doc -->
	 * @see #LINEAR
	 * @model literal="linear"
	 * @generated
	 * @ordered
	 */
	public static final int LINEAR_VALUE = 1;

	/**
	 * The '<em><b>CALIBRATED</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Stretched, then through the measured tone calibration.
	 * <!-- end-model-doc -->
	 * @see #CALIBRATED
	 * @model literal="calibrated"
	 * @generated
	 * @ordered
	 */
	public static final int CALIBRATED_VALUE = 2;

	/**
	 * An array of all the '<em><b>Tone Mode</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final ToneMode[] VALUES_ARRAY =
		new ToneMode[] {
			STRETCH,
			LINEAR,
			CALIBRATED,
		};

	/**
	 * A public read-only list of all the '<em><b>Tone Mode</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<ToneMode> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Tone Mode</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ToneMode get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			ToneMode result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Tone Mode</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ToneMode getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			ToneMode result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Tone Mode</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ToneMode get(int value) {
		switch (value) {
			case STRETCH_VALUE: return STRETCH;
			case LINEAR_VALUE: return LINEAR;
			case CALIBRATED_VALUE: return CALIBRATED;
		}
		return null;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final int value;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String name;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String literal;

	/**
	 * Only this class can construct instances.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private ToneMode(int value, String name, String literal) {
		this.value = value;
		this.name = name;
		this.literal = literal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getValue() {
	  return value;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
	  return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLiteral() {
	  return literal;
	}

	/**
	 * Returns the literal value of the enumerator, which is its string representation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		return literal;
	}
	
} //ToneMode
