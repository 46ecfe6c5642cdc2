/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.catalog;

import hullwright.check.OfferedPart;
import java.util.Comparator;
import java.util.function.Function;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerComparator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;

/**
 * The order of parts by what stands in one column.
 */
final class PartOrder extends ViewerComparator {

	private final Comparator<OfferedPart> order;

	private PartOrder(Comparator<OfferedPart> order) {
		this.order = order;
	}

	/** Sorts a table by a column: upwards first, downwards the next time. */
	static void by(TableViewer viewer, TableColumn column, Function<OfferedPart, String> value) {
		Table table = viewer.getTable();
		boolean up = table.getSortColumn() != column || table.getSortDirection() == SWT.DOWN;
		table.setSortColumn(column);
		table.setSortDirection(up ? SWT.UP : SWT.DOWN);
		Comparator<OfferedPart> order = Comparator.comparing(value, String.CASE_INSENSITIVE_ORDER);
		viewer.setComparator(new PartOrder(up ? order : order.reversed()));
	}

	@Override
	public int compare(Viewer viewer, Object one, Object other) {
		return order.compare((OfferedPart) one, (OfferedPart) other);
	}
}
