/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.conversion;

import org.eclipse.xtext.conversion.IValueConverter;
import org.eclipse.xtext.conversion.ValueConverterException;
import org.eclipse.xtext.nodemodel.INode;

/**
 * Reads a whole number: of a port, a hull, an instance.
 */
final class WholeNumberConverter implements IValueConverter<Integer> {

	@Override
	public Integer toValue(String text, INode node) throws ValueConverterException {
		if (text == null || text.isEmpty()) {
			return null;
		}
		try {
			return Integer.valueOf(text);
		} catch (NumberFormatException e) {
			throw new ValueConverterException("'" + text + "' is too large; the largest number is " + Integer.MAX_VALUE, node, e);
		}
	}

	@Override
	public String toString(Integer value) throws ValueConverterException {
		return value.toString();
	}
}
