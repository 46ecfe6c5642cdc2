/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.boat;

import hullwright.documents.chart.Chart;
import hullwright.documents.scene.Scene;
import hullwright.documents.scene.Shape;
import hullwright.lang.ide.LiveBoat;
import hullwright.workbench.picture.PictureActions;
import hullwright.workbench.picture.PictureView;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.action.Action;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.statushandlers.StatusManager;

/**
 * A picture of the boat in view that leads to the text: what is chosen in it is shown there.
 */
public abstract class BoatPictureView extends PictureView {

	private final Consumer<LiveBoat> follow = this::follow;
	private ElementPlaces places;
	private Chart chart;

	@Override
	public void createPartControl(Composite parent) {
		super.createPartControl(parent);
		empty("No boat in view. Open a .hull file with a series.");
		PictureActions.addTo(this);
		canvas().onChoice(this::open);
		BoatInView.get().join(follow);
	}

	@Override
	public void dispose() {
		BoatInView.get().leave(follow);
		super.dispose();
	}

	/** Shows a boat that is there. */
	protected abstract void show(LiveBoat boat);

	private void follow(LiveBoat boat) {
		note(boat.outdated().map(why -> "The last boat that could be read; " + why).or(() -> boat.notes().stream().findFirst()).orElse(""));
		if (boat.boat().isPresent()) {
			show(boat);
		} else {
			empty(boat.notes().isEmpty() ? "No boat in view. Open a .hull file with a series, or declare one, and it is shown here."
					: "Nothing can be shown yet: " + boat.notes().get(0));
		}
	}

	/** To be called when a picture is about to be shown. */
	protected void places(LiveBoat boat, Scene scene) {
		places = new ElementPlaces(boat, scene.things().stream().map(Shape.Thing::element).distinct().toList());
	}

	/** Where the things in the picture stand, once there is one. */
	protected Optional<ElementPlaces> places() {
		return Optional.ofNullable(places);
	}

	/** Shows a chart, whose table can be copied from then on. */
	protected void chart(LiveBoat boat, Chart drawn, String whenEmpty) {
		chart = drawn;
		places(boat, drawn.scene());
		if (drawn.isEmpty()) {
			empty(whenEmpty);
		}
	}

	/** Adds the action that copies the table of the chart. */
	protected void offerTable() {
		Action copy = new Action("Copy as table") {
			@Override
			public void run() {
				copyTable();
			}
		};
		copy.setImageDescriptor(PlatformUI.getWorkbench().getSharedImages().getImageDescriptor(ISharedImages.IMG_TOOL_COPY));
		getViewSite().getActionBars().getToolBarManager().add(copy);
		getViewSite().getActionBars().setGlobalActionHandler(ActionFactory.COPY.getId(), copy);
	}

	/** The table of the chart that is shown, with tabs between columns. */
	public Optional<String> table() {
		return Optional.ofNullable(chart).map(Chart::tabbed);
	}

	private void copyTable() {
		table().ifPresent(text -> {
			Clipboard clipboard = new Clipboard(canvas().getDisplay());
			clipboard.setContents(new Object[] { text }, new Transfer[] { TextTransfer.getInstance() });
			clipboard.dispose();
		});
	}

	private void open(Shape.Thing thing) {
		if (places != null) {
			try {
				places.open(getSite().getPage(), thing.element(), false);
			} catch (PartInitException e) {
				StatusManager.getManager().handle(e, "hullwright.workbench");
			}
		}
	}
}
