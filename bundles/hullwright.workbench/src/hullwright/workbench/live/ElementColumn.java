/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.views.markers.MarkerField;
import org.eclipse.ui.views.markers.MarkerItem;

/**
 * The element that a finding is about, as waivers and reports name it.
 */
public final class ElementColumn extends MarkerField {

	private static final int WIDTH = 200;

	@Override
	public String getValue(MarkerItem item) {
		return item.getAttributeValue(FindingMarkers.ELEMENT, "");
	}

	@Override
	public int getDefaultColumnWidth(Control control) {
		return WIDTH;
	}
}
