/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import java.util.Comparator;
import org.eclipse.core.resources.IMarker;
import org.eclipse.jface.viewers.ViewerCell;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.views.markers.MarkerField;
import org.eclipse.ui.views.markers.MarkerItem;

/**
 * What was found, with a sign for how bad it is and whether something can be done about it.
 */
public final class FindingColumn extends MarkerField {

	private static final int WIDTH = 460;
	private static final Comparator<MarkerItem> WORST_FIRST = Comparator
			.comparingInt((MarkerItem item) -> item.getAttributeValue(IMarker.SEVERITY, IMarker.SEVERITY_INFO)).reversed()
			.thenComparing(item -> item.getAttributeValue(IMarker.MESSAGE, ""));

	@Override
	public String getValue(MarkerItem item) {
		return item.getAttributeValue(IMarker.MESSAGE, "");
	}

	@Override
	public void update(ViewerCell cell) {
		super.update(cell);
		MarkerItem item = (MarkerItem) cell.getElement();
		if (item.getMarker() != null) {
			cell.setImage(PlatformUI.getWorkbench().getSharedImages().getImage(sign(item)));
		}
	}

	/** The platform's signs, declared in PlatformImages. */
	private static String sign(MarkerItem item) {
		boolean fixable = item.getAttributeValue(FindingMarkers.FIXABLE, false);
		String prefix = fixable ? "IMG_OBJS_FIXABLE_" : "IMG_OBJS_";
		return switch (item.getAttributeValue(IMarker.SEVERITY, IMarker.SEVERITY_INFO)) {
			case IMarker.SEVERITY_ERROR -> prefix + (fixable ? "ERROR" : "ERROR_PATH");
			case IMarker.SEVERITY_WARNING -> prefix + (fixable ? "WARNING" : "WARNING_PATH");
			default -> prefix + (fixable ? "INFO" : "INFO_PATH");
		};
	}

	@Override
	public int compare(MarkerItem one, MarkerItem other) {
		return WORST_FIRST.compare(one, other);
	}

	@Override
	public int getDefaultColumnWidth(Control control) {
		return WIDTH;
	}
}
