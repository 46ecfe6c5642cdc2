/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.edit;

import hullwright.spec.SerialLine;
import hullwright.spec.SpecPackage;
import java.util.List;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * Changes what the head of a serial line says.
 */
public final class LineText {

	private LineText() {
	}

	/** Sets the rate: in place of the one that is written, else before the braces. */
	public static TextEdit rate(SerialLine line, String rate) {
		List<INode> written = NodeModelUtils.findNodesForFeature(line, SpecPackage.Literals.SERIAL_LINE__RATE);
		if (!written.isEmpty()) {
			return new TextEdit(written.get(0).getOffset(), written.get(0).getLength(), rate);
		}
		List<INode> title = NodeModelUtils.findNodesForFeature(line, SpecPackage.Literals.SERIAL_LINE__TITLE);
		List<INode> named = title.isEmpty() ? NodeModelUtils.findNodesForFeature(line, SpecPackage.Literals.NAMED__NAME) : title;
		return new TextEdit(named.get(0).getEndOffset(), 0, " at " + rate);
	}
}
