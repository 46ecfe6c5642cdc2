/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.picture;

import hullwright.documents.scene.Extent;
import hullwright.documents.scene.Ink;
import hullwright.documents.scene.Palette;
import hullwright.documents.scene.Scene;
import hullwright.documents.scene.Shape;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.ScrollBar;

/**
 * A window onto a picture. The wheel moves it up and down, with Shift sideways, with Ctrl it zooms about the pointer; dragging
 * moves it; by keyboard the arrows move, plus and minus zoom, 0 fits the picture in, 1 shows its natural size, n and p go
 * to the next and the previous thing, Enter chooses it.
 */
public final class PictureCanvas extends Canvas {

	private static final double LEAST_ZOOM = 0.05;
	private static final double MOST_ZOOM = 8;
	private static final double STEP = 1.2;
	private static final int ARROW = 48;
	private static final int DRAG_FROM = 4;

	private Palette palette = Palette.LIGHT;
	private ScenePainter painter;
	private Scene scene;
	private Set<String> chosen = Set.of();
	private Consumer<Shape.Thing> onChoice = thing -> {
	};
	private double zoom = 1;
	private double x;
	private double y;
	private boolean fitted = true;
	private Point dragFrom;
	private boolean dragged;
	private int focus = -1;

	/** An empty canvas. */
	public PictureCanvas(Composite parent) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.H_SCROLL | SWT.V_SCROLL | SWT.NO_BACKGROUND);
		addListener(SWT.Paint, this::paint);
		addListener(SWT.Resize, event -> resized());
		addListener(SWT.MouseWheel, this::wheel);
		addListener(SWT.MouseHorizontalWheel, event -> moveBy(-event.count * ARROW / 3.0, 0));
		addListener(SWT.MouseDown, this::press);
		addListener(SWT.MouseMove, this::point);
		addListener(SWT.MouseUp, this::release);
		addListener(SWT.MouseDoubleClick, this::closerOrWhole);
		addListener(SWT.KeyDown, this::key);
		addListener(SWT.Traverse, event -> event.doit = event.detail != SWT.TRAVERSE_ARROW_NEXT && event.detail != SWT.TRAVERSE_ARROW_PREVIOUS);
		addListener(SWT.FocusIn, event -> redraw());
		addListener(SWT.FocusOut, event -> redraw());
		addListener(SWT.Dispose, event -> forgetPainter());
		getHorizontalBar().addListener(SWT.Selection, event -> moveTo(getHorizontalBar().getSelection(), y));
		getVerticalBar().addListener(SWT.Selection, event -> moveTo(x, getVerticalBar().getSelection()));
	}

	/** Whom to tell when somebody chooses a thing. */
	public void onChoice(Consumer<Shape.Thing> listener) {
		onChoice = listener;
	}

	/** Shows another picture, from the same place at the same size; a fitted one is fitted in. */
	public void show(Scene picture) {
		scene = picture;
		focus = -1;
		if (fitted) {
			fit();
		} else {
			adjust();
		}
	}

	/** The picture that is shown, if there is one. */
	public Optional<Scene> scene() {
		return Optional.ofNullable(scene);
	}

	/** Light or dark as the theme has the view around it, which may change at any time. */
	private void followTheme() {
		Color ground = getParent().getBackground();
		boolean dark = ground.getRed() * 0.299 + ground.getGreen() * 0.587 + ground.getBlue() * 0.114 < 110;
		Palette wanted = dark ? Palette.DARK : Palette.LIGHT;
		if (palette != wanted) {
			palette = wanted;
			forgetPainter();
		}
	}

	/** Marks the things that stand for these elements, and brings them into view unless they were marked before. */
	public void choose(Set<String> elements) {
		if (scene != null && !elements.equals(chosen)) {
			chosen = Set.copyOf(elements);
			revealChosen();
			redraw();
		}
	}

	/** Brings what is marked into view. */
	public void revealChosen() {
		placeOfChosen().ifPresent(this::reveal);
	}

	/** Of several things with one name the last one: a device rather than its drop. */
	private Optional<Extent> placeOfChosen() {
		return scene == null ? Optional.empty() : scene.things().stream().filter(thing -> chosen.contains(thing.element())).map(Shape.Thing::extent)
				.reduce((earlier, later) -> later);
	}

	/** The elements that are marked. */
	public Set<String> chosen() {
		return chosen;
	}

	/** Makes the picture as large as fits in, but no larger than natural. */
	public void fit() {
		fitted = true;
		if (scene != null) {
			Rectangle area = getClientArea();
			zoom = clamp(Math.min(1, Math.min(area.width / scene.width(), area.height / scene.height())));
			x = 0;
			y = 0;
			adjust();
		}
	}

	/** From now on in its natural size, for pictures that are read rather than looked at. */
	public void startInNaturalSize() {
		fitted = false;
	}

	/** Shows the picture in its natural size. */
	public void naturalSize() {
		zoomTo(1, getClientArea().width / 2, getClientArea().height / 2);
	}

	/** Makes it larger about what is marked, or about the middle. */
	public void zoomIn() {
		zoomBy(STEP);
	}

	/** Makes it smaller about what is marked, or about the middle. */
	public void zoomOut() {
		zoomBy(1 / STEP);
	}

	private void zoomBy(double factor) {
		Rectangle area = getClientArea();
		Point about = placeOfChosen().map(at -> new Point((int) ((at.x() + at.width() / 2) * zoom - x), (int) ((at.y() + at.height() / 2) * zoom - y)))
				.filter(area::contains).orElse(new Point(area.width / 2, area.height / 2));
		zoomTo(zoom * factor, about.x, about.y);
	}

	/** Dots for each unit of the picture. */
	public double zoom() {
		return zoom;
	}

	private static double clamp(double wanted) {
		return Math.max(LEAST_ZOOM, Math.min(MOST_ZOOM, wanted));
	}

	private void zoomTo(double wanted, int aboutX, int aboutY) {
		double next = clamp(wanted);
		fitted = false;
		x = (x + aboutX) * next / zoom - aboutX;
		y = (y + aboutY) * next / zoom - aboutY;
		zoom = next;
		adjust();
	}

	private void moveBy(double across, double down) {
		moveTo(x + across, y + down);
	}

	private void moveTo(double toX, double toY) {
		fitted = false;
		x = toX;
		y = toY;
		adjust();
	}

	private void reveal(Extent thing) {
		Rectangle area = getClientArea();
		double left = thing.x() * zoom - x;
		double top = thing.y() * zoom - y;
		if (left < 0 || left + thing.width() * zoom > area.width) {
			x = (thing.x() + thing.width() / 2) * zoom - area.width / 2.0;
		}
		if (top < 0 || top + thing.height() * zoom > area.height) {
			y = (thing.y() + thing.height() / 2) * zoom - area.height / 2.0;
		}
		adjust();
	}

	private void resized() {
		if (fitted) {
			fit();
		} else {
			adjust();
		}
	}

	/** Keeps the picture in the window and the scroll bars true. */
	private void adjust() {
		Rectangle area = getClientArea();
		int width = scene == null ? 0 : (int) Math.ceil(scene.width() * zoom);
		int height = scene == null ? 0 : (int) Math.ceil(scene.height() * zoom);
		x = Math.max(0, Math.min(x, width - area.width));
		y = Math.max(0, Math.min(y, height - area.height));
		set(getHorizontalBar(), x, width, area.width);
		set(getVerticalBar(), y, height, area.height);
		redraw();
	}

	private static void set(ScrollBar bar, double at, int whole, int shown) {
		bar.setVisible(whole > shown);
		bar.setValues((int) at, 0, Math.max(whole, 1), Math.max(1, Math.min(shown, whole)), ARROW, Math.max(1, shown));
	}

	private void paint(Event event) {
		followTheme();
		Rectangle area = getClientArea();
		int ground = palette.of(Ink.GROUND);
		event.gc.setBackground(new Color(ground >> 16 & 0xff, ground >> 8 & 0xff, ground & 0xff));
		event.gc.fillRectangle(area);
		if (scene == null) {
			return;
		}
		if (painter == null) {
			painter = new ScenePainter(getDisplay(), palette, getFont().getFontData()[0].getName(), getDisplay().getDPI().x);
		}
		Extent visible = new Extent((event.x + x) / zoom, (event.y + y) / zoom, event.width / zoom, event.height / zoom);
		painter.paint(event.gc, scene, -x, -y, zoom, visible, chosen);
		if (isFocusControl()) {
			event.gc.drawFocus(0, 0, area.width, area.height);
		}
	}

	private void forgetPainter() {
		if (painter != null) {
			painter.dispose();
			painter = null;
		}
	}

	private void wheel(Event event) {
		if ((event.stateMask & SWT.MOD1) != 0) {
			zoomTo(zoom * Math.pow(STEP, Math.signum(event.count)), event.x, event.y);
		} else if ((event.stateMask & SWT.SHIFT) != 0) {
			moveBy(-event.count * ARROW / 3.0, 0);
		} else {
			moveBy(0, -event.count * ARROW / 3.0);
		}
		event.doit = false;
	}

	private void press(Event event) {
		forceFocus();
		if (event.button == 1) {
			dragFrom = new Point(event.x, event.y);
			dragged = false;
		}
	}

	private void point(Event event) {
		if (dragFrom == null) {
			String tip = under(event).map(Shape.Thing::tip).filter(text -> !text.isEmpty()).map(text -> text.replace("&", "&&")).orElse(null);
			if (tip == null ? getToolTipText() != null : !tip.equals(getToolTipText())) {
				setToolTipText(tip);
			}
		} else if (dragged || Math.abs(event.x - dragFrom.x) + Math.abs(event.y - dragFrom.y) > DRAG_FROM) {
			dragged = true;
			moveBy(dragFrom.x - event.x, dragFrom.y - event.y);
			dragFrom = new Point(event.x, event.y);
		}
	}

	private void release(Event event) {
		if (event.button == 1 && dragFrom != null && !dragged) {
			under(event).ifPresent(this::chosenByHand);
		}
		dragFrom = null;
	}

	/** From an overview to where it can be read, and back. */
	private void closerOrWhole(Event event) {
		if (zoom < 1) {
			zoomTo(1, event.x, event.y);
		} else {
			fit();
		}
	}

	private void chosenByHand(Shape.Thing thing) {
		chosen = Set.of(thing.element());
		redraw();
		onChoice.accept(thing);
	}

	private Optional<Shape.Thing> under(Event event) {
		return scene == null ? Optional.empty() : scene.at((event.x + x) / zoom, (event.y + y) / zoom);
	}

	private void key(Event event) {
		switch (event.keyCode) {
		case SWT.ARROW_LEFT -> moveBy(-ARROW, 0);
		case SWT.ARROW_RIGHT -> moveBy(ARROW, 0);
		case SWT.ARROW_UP -> moveBy(0, -ARROW);
		case SWT.ARROW_DOWN -> moveBy(0, ARROW);
		case SWT.PAGE_UP -> moveBy(0, -getClientArea().height);
		case SWT.PAGE_DOWN -> moveBy(0, getClientArea().height);
		case SWT.HOME -> moveTo(0, 0);
		default -> letter(event.character);
		}
	}

	private void letter(char character) {
		switch (character) {
		case '+', '=' -> zoomIn();
		case '-' -> zoomOut();
		case '0' -> fit();
		case '1' -> naturalSize();
		case 'n' -> step(1);
		case 'p' -> step(-1);
		case SWT.CR -> chosenThing().ifPresent(this::chosenByHand);
		default -> {
			// means nothing here
		}
		}
	}

	private Optional<Shape.Thing> chosenThing() {
		return scene == null || focus < 0 || focus >= scene.things().size() ? Optional.empty() : Optional.of(scene.things().get(focus));
	}

	/** To the next or the last thing, in the order of the drawing. */
	private void step(int by) {
		if (scene != null && !scene.things().isEmpty()) {
			focus = Math.floorMod(focus + by, scene.things().size());
			Shape.Thing thing = scene.things().get(focus);
			chosen = Set.of(thing.element());
			reveal(thing.extent());
			redraw();
		}
	}
}
