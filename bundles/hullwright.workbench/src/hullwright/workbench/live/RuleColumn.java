/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.views.markers.MarkerField;
import org.eclipse.ui.views.markers.MarkerItem;

/**
 * The id of the rule that found it, as a profile names it.
 */
public final class RuleColumn extends MarkerField {

	private static final int WIDTH = 190;

	@Override
	public String getValue(MarkerItem item) {
		return item.getAttributeValue(FindingMarkers.RULE, "");
	}

	@Override
	public int getDefaultColumnWidth(Control control) {
		return WIDTH;
	}
}
