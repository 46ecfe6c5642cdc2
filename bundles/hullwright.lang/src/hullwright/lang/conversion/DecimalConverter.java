/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.conversion;

import org.eclipse.xtext.conversion.IValueConverter;
import org.eclipse.xtext.conversion.ValueConverterException;
import org.eclipse.xtext.nodemodel.INode;

/**
 * Reads a plain number, such as a multiple of a rating.
 */
final class DecimalConverter implements IValueConverter<Double> {

	@Override
	public Double toValue(String text, INode node) throws ValueConverterException {
		if (text == null) {
			return null;
		}
		double value = Double.parseDouble(text.replaceAll("\\s", ""));
		if (Double.isInfinite(value)) {
			throw new ValueConverterException("'" + text.strip() + "' is beyond all measure", node, null);
		}
		return value;
	}

	@Override
	public String toString(Double value) throws ValueConverterException {
		return value.toString();
	}
}
