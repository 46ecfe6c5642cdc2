/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.conversion;

import org.eclipse.xtext.conversion.IValueConverter;
import org.eclipse.xtext.conversion.ValueConverterException;
import org.eclipse.xtext.nodemodel.INode;

import hullwright.quantity.Quantity;

/**
 * Reads what a house sets for a rule: a quantity with its unit, a plain number, or a word.
 */
final class ParameterValueConverter implements IValueConverter<Object> {

	private final QuantityConverter quantity = QuantityConverter.ofAnyKind();
	private final DecimalConverter number = new DecimalConverter();

	@Override
	public Object toValue(String text, INode node) throws ValueConverterException {
		if (text == null || Character.isLetter(text.strip().codePointAt(0))) {
			return text;
		}
		boolean plain = text.strip().matches("[0-9]+\\s*(\\.\\s*[0-9]+)?");
		return plain ? number.toValue(text, node) : quantity.toValue(text, node);
	}

	@Override
	public String toString(Object value) throws ValueConverterException {
		return value instanceof Quantity ? quantity.toString(value) : String.valueOf(value);
	}
}
