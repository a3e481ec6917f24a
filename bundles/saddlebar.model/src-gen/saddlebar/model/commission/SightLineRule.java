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
 * A representation of the literals of the enumeration '<em><b>Sight Line Rule</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What a layer does under the line that foil or came covers.
 * <!-- end-model-doc -->
 * @see saddlebar.model.commission.CommissionPackage#getSightLineRule()
 * @model
 * @generated
 */
public enum SightLineRule implements Enumerator {
	/**
	 * The '<em><b>KEEP OFF</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Nothing is printed there.
	 * <!-- end-model-doc -->
	 * @see #KEEP_OFF_VALUE
	 * @generated
	 * @ordered
	 */
	KEEP_OFF(0, "KEEP_OFF", "keep off"),

	/**
	 * The '<em><b>FADE</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tone runs out towards the edge.
	 * <!-- end-model-doc -->
	 * @see #FADE_VALUE
	 * @generated
	 * @ordered
	 */
	FADE(1, "FADE", "fade"),

	/**
	 * The '<em><b>PRINT UNDER</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Printed to the cut edge and over it by the bleed.
	 * <!-- end-model-doc -->
	 * @see #PRINT_UNDER_VALUE
	 * @generated
	 * @ordered
	 */
	PRINT_UNDER(2, "PRINT_UNDER", "print under");

	/**
	 * The '<em><b>KEEP OFF</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Nothing is printed there.
	 * <!-- end-model-doc -->
	 * @see #KEEP_OFF
	 * @model literal="keep off"
	 * @generated
	 * @ordered
	 */
	public static final int KEEP_OFF_VALUE = 0;

	/**
	 * The '<em><b>FADE</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tone runs out towards the edge.
	 * <!-- end-model-doc -->
	 * @see #FADE
	 * @model literal="fade"
	 * @generated
	 * @ordered
	 */
	public static final int FADE_VALUE = 1;

	/**
	 * The '<em><b>PRINT UNDER</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Printed to the cut edge and over it by the bleed.
	 * <!-- end-model-doc -->
	 * @see #PRINT_UNDER
	 * @model literal="print under"
	 * @generated
	 * @ordered
	 */
	public static final int PRINT_UNDER_VALUE = 2;

	/**
	 * An array of all the '<em><b>Sight Line Rule</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final SightLineRule[] VALUES_ARRAY =
		new SightLineRule[] {
			KEEP_OFF,
			FADE,
			PRINT_UNDER,
		};

	/**
	 * A public read-only list of all the '<em><b>Sight Line Rule</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<SightLineRule> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Sight Line Rule</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SightLineRule get(String literal) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			SightLineRule result = VALUES_ARRAY[i];
			if (result.toString().equals(literal)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Sight Line Rule</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SightLineRule getByName(String name) {
		for (int i = 0; i < VALUES_ARRAY.length; ++i) {
			SightLineRule result = VALUES_ARRAY[i];
			if (result.getName().equals(name)) {
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Sight Line Rule</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static SightLineRule get(int value) {
		switch (value) {
			case KEEP_OFF_VALUE: return KEEP_OFF;
			case FADE_VALUE: return FADE;
			case PRINT_UNDER_VALUE: return PRINT_UNDER;
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
	private SightLineRule(int value, String name, String literal) {
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
	
} //SightLineRule
