/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.views.markers.MarkerField;
import org.eclipse.ui.views.markers.MarkerItem;

/**
 * The boats on which a finding occurs.
 */
public final class BoatsColumn extends MarkerField {

	private static final int WIDTH = 180;

	@Override
	public String getValue(MarkerItem item) {
		return item.getAttributeValue(FindingMarkers.BOATS, "");
	}

	@Override
	public int getDefaultColumnWidth(Control control) {
		return WIDTH;
	}
}
