/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.picture;

import hullwright.documents.scene.Scene;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.part.ViewPart;
import org.eclipse.ui.progress.IWorkbenchSiteProgressService;

/**
 * A view of one picture, which is drawn in the background: with a note above it when there is something to say, and a sentence in
 * its place when there is none.
 */
public abstract class PictureView extends ViewPart {

	private Composite page;
	private Composite stack;
	private StackLayout layout;
	private Label note;
	private Label nothing;
	private PictureCanvas canvas;
	private Job drawing;
	private boolean hasNothingToShow;

	@Override
	public void createPartControl(Composite parent) {
		page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(page);
		controlsAbove(page);
		note = new Label(page, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).indent(6, 3).exclude(true).applyTo(note);
		note.setVisible(false);
		stack = new Composite(page, SWT.NONE);
		layout = new StackLayout();
		stack.setLayout(layout);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(stack);
		Composite empty = new Composite(stack, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(16, 16).applyTo(empty);
		nothing = new Label(empty, SWT.WRAP | SWT.CENTER);
		GridDataFactory.fillDefaults().grab(true, true).align(SWT.FILL, SWT.CENTER).applyTo(nothing);
		canvas = new PictureCanvas(stack);
		layout.topControl = empty;
	}

	/** Controls above the picture; none unless a view has some. */
	protected void controlsAbove(Composite parent) {
		// a plain view has none
	}

	@Override
	public void setFocus() {
		(layout.topControl == canvas ? canvas : stack).setFocus();
	}

	/** The canvas. */
	public PictureCanvas canvas() {
		return canvas;
	}

	/** Says something above the picture; nothing if the text is empty. */
	protected void note(String text) {
		if (!text.equals(note.getText())) {
			note.setText(text.replace("&", "&&"));
			note.setVisible(!text.isEmpty());
			((GridData) note.getLayoutData()).exclude = text.isEmpty();
			page.layout();
		}
	}

	/** Says something in place of a picture. */
	protected void empty(String text) {
		if (drawing != null) {
			drawing.cancel();
		}
		hasNothingToShow = true;
		nothing.setText(text.replace("&", "&&"));
		layout.topControl = nothing.getParent();
		nothing.getParent().layout();
		stack.layout();
	}

	/**
	 * Draws in the background and shows the picture; an earlier one that is not done yet is given up.
	 *
	 * @param name what is done, for the Progress view
	 * @param draw draws; may call {@link #shown} before it is done
	 * @param then told of the picture in the UI thread, before it is shown; may call {@link #empty} to have it not shown
	 */
	protected void draw(String name, Function<IProgressMonitor, Scene> draw, Consumer<Scene> then) {
		if (drawing != null) {
			drawing.cancel();
		}
		Job job = Job.create(name, monitor -> {
			Scene scene = draw.apply(monitor);
			onUiThread(() -> {
				if (!monitor.isCanceled()) {
					then.accept(scene);
					if (!hasNothingToShow) {
						put(scene);
					}
				}
			});
			return monitor.isCanceled() ? Status.CANCEL_STATUS : (IStatus) Status.OK_STATUS;
		});
		drawing = job;
		hasNothingToShow = false;
		if (layout.topControl != canvas) {
			nothing.setText(name + "\u2026");
		}
		IWorkbenchSiteProgressService progress = getSite().getService(IWorkbenchSiteProgressService.class);
		if (progress == null) {
			job.schedule();
		} else {
			progress.schedule(job, 0, true);
		}
	}

	/** Shows a picture that is not the last word yet. May be called by the job that draws. */
	protected void shown(Scene scene) {
		onUiThread(() -> put(scene));
	}

	private void put(Scene scene) {
		layout.topControl = canvas;
		stack.layout();
		canvas.show(scene);
		pictureShown();
	}

	/** Called in the UI thread whenever another picture is shown. */
	protected void pictureShown() {
		// nothing depends on it here
	}

	private void onUiThread(Runnable task) {
		if (!page.isDisposed()) {
			page.getDisplay().asyncExec(() -> {
				if (!page.isDisposed()) {
					task.run();
				}
			});
		}
	}

	@Override
	public void dispose() {
		if (drawing != null) {
			drawing.cancel();
		}
		super.dispose();
	}
}
