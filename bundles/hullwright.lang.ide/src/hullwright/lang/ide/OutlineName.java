/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import org.eclipse.xtext.ide.server.symbol.DocumentSymbolMapper.DocumentSymbolNameProvider;
import org.eclipse.xtext.naming.QualifiedName;

/**
 * Names an element in the outline as the text does: what it is part of, the outline shows by itself.
 */
class OutlineName extends DocumentSymbolNameProvider {

	@Override
	protected String getName(QualifiedName name) {
		return name == null ? null : name.getLastSegment();
	}
}
