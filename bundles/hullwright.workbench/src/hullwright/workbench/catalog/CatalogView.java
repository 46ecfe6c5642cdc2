/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.catalog;

import hullwright.check.OfferedPart;
import hullwright.workbench.live.ReadOnlyText;
import hullwright.workbench.live.ProjectText;
import hullwright.workbench.wizard.TextPreview;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceChangeListener;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.part.ViewPart;
import org.eclipse.ui.statushandlers.StatusManager;
import org.eclipse.ui.texteditor.ITextEditor;

/**
 * The parts that the project in the editor can use, its own and the built-in ones: to look for by what they do, to read, and to put
 * into the text.
 */
public final class CatalogView extends ViewPart {

	/** The id under which plugin.xml declares this view. */
	public static final String ID = "hullwright.workbench.catalog";

	private FilterBar bar;
	private TableViewer table;
	private TextPreview declaration;
	private Shelf shelf;
	private Action insert;
	private Action declare;
	private long asked;
	private final IResourceChangeListener saved = this::resourceChanged;
	private final ISelectionListener cursor = (part, selection) -> {
		if (part instanceof ITextEditor && bar.wantsCursor()) {
			askForCursor();
		}
	};
	private final IPartListener2 editors = new IPartListener2() {
		@Override
		public void partActivated(IWorkbenchPartReference part) {
			if (part.getPart(false) instanceof ITextEditor) {
				follow();
			}
		}
	};

	@Override
	public void createPartControl(Composite parent) {
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
		bar = new FilterBar(parent, this::filter);
		SashForm sash = new SashForm(parent, SWT.HORIZONTAL);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
		createTable(sash);
		declaration = new TextPreview(sash);
		sash.setWeights(68, 32);
		createActions();
		bar.words().addListener(SWT.KeyDown, event -> {
			if (event.keyCode == SWT.ARROW_DOWN) {
				table.getTable().setFocus();
			} else if (event.keyCode == SWT.ESC) {
				bar.clear();
			}
		});
		bar.words().addListener(SWT.DefaultSelection, event -> {
			if (event.detail != SWT.CANCEL && event.detail != SWT.ICON_CANCEL) {
				insert.run();
			}
		});
		getSite().setSelectionProvider(table);
		getSite().getPage().addPartListener(editors);
		getSite().getPage().addPostSelectionListener(cursor);
		ResourcesPlugin.getWorkspace().addResourceChangeListener(saved, IResourceChangeEvent.POST_CHANGE);
		setContentDescription("The catalogs are being read.");
		follow();
	}

	private void createTable(Composite parent) {
		table = new TableViewer(parent, SWT.FULL_SELECTION | SWT.BORDER | SWT.SINGLE);
		table.setContentProvider(ArrayContentProvider.getInstance());
		table.getTable().setHeaderVisible(true);
		column("Part", 150, part -> part.part().identity().name());
		column("Title", 240, part -> part.part().identity().title());
		column("Use", 100, part -> PartUse.of(part.part()).label());
		column("Draws or carries", 150, part -> PartFacts.load(part.part()));
		column("Lengths, voltages, ports", 190, part -> PartFacts.range(part.part()));
		column("Connectors", 190, part -> PartFacts.connectors(part.part()));
		column("Suits", 110, part -> PartFacts.zones(part.part()));
		column("Data", 200, part -> PartFacts.data(part.part()));
		column("Article", 80, part -> part.part().identity().article());
		column("Catalog", 120, OfferedPart::catalog);
		table.addSelectionChangedListener(event -> showDeclaration());
		table.addOpenListener(event -> insert.run());
		table.getTable().addListener(SWT.KeyDown, event -> {
			if (event.keyCode == SWT.F3) {
				declare.run();
			} else if (event.keyCode == SWT.ESC) {
				bar.clear();
			}
		});
	}

	private void column(String title, int width, Function<OfferedPart, String> value) {
		TableViewerColumn column = new TableViewerColumn(table, SWT.NONE);
		column.getColumn().setText(title);
		column.getColumn().setWidth(width);
		column.setLabelProvider(ColumnLabelProvider.createTextProvider(each -> value.apply((OfferedPart) each)));
		column.getColumn().addListener(SWT.Selection, event -> PartOrder.by(table, column.getColumn(), value));
	}

	private void createActions() {
		insert = new Action("Insert into the text") {
			@Override
			public void run() {
				selected().ifPresent(CatalogView.this::insert);
			}
		};
		insert.setToolTipText("Put the part where the cursor of the editor is (Return)");
		insert.setImageDescriptor(org.eclipse.ui.plugin.AbstractUIPlugin.imageDescriptorFromPlugin("hullwright.workbench", "icons/part.png"));
		declare = new Action("Go to declaration\tF3") {
			@Override
			public void run() {
				selected().ifPresent(CatalogView.this::open);
			}
		};
		Action clear = new Action("Clear filters\tEsc") {
			@Override
			public void run() {
				bar.clear();
			}
		};
		getViewSite().getActionBars().getToolBarManager().add(insert);
		MenuManager menu = new MenuManager();
		menu.add(insert);
		menu.add(declare);
		menu.add(new Separator());
		menu.add(clear);
		table.getTable().setMenu(menu.createContextMenu(table.getTable()));
	}

	private Optional<OfferedPart> selected() {
		return Optional.ofNullable((OfferedPart) table.getStructuredSelection().getFirstElement());
	}

	private void insert(OfferedPart part) {
		Cursor.in(getSite().getPage()).ifPresentOrElse(cursor -> cursor.insert(part), () -> StatusManager.getManager()
				.handle(Status.info("Open the series that the part is for, and put the cursor where it goes."), StatusManager.SHOW));
	}

	private void open(OfferedPart part) {
		try {
			Optional<IFile> file = part.builtIn() ? Optional.empty() : shelf.text().flatMap(text -> text.file(part.file()));
			var editor = file.isPresent() ? IDE.openEditor(getSite().getPage(), file.get())
					: ReadOnlyText.open(getSite().getPage(), part.file(), PartDeclaration.catalogText(shelf.snapshot(), part));
			if (editor instanceof ITextEditor text) {
				text.selectAndReveal(part.origin().offset(), part.origin().length());
			}
		} catch (CoreException e) {
			StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW);
		}
	}

	private void showDeclaration() {
		declaration.show(selected().map(part -> PartDeclaration.of(PartDeclaration.catalogText(shelf.snapshot(), part), part.origin().offset())).orElse(""));
	}

	/** Shows the parts for the editor that is at work, unless the project is the one that is shown. */
	private void follow() {
		Optional<ProjectText> text = Cursor.in(getSite().getPage()).map(Cursor::text).or(() -> shelf == null ? Optional.empty() : shelf.text());
		Optional<Path> shown = shelf == null ? Optional.empty() : shelf.text().map(ProjectText::folder);
		if (shelf == null || !text.map(ProjectText::folder).equals(shown)) {
			read(text);
		}
		if (bar.wantsCursor()) {
			askForCursor();
		}
	}

	private void read(Optional<ProjectText> text) {
		Display display = getSite().getShell().getDisplay();
		long mine = ++asked;
		Shelf.read(text).whenComplete((found, failure) -> display.asyncExec(() -> {
			if (mine == asked && !table.getTable().isDisposed()) {
				if (failure != null) {
					setContentDescription("The catalogs cannot be read: " + failure.getMessage());
				} else {
					show(found);
				}
			}
		}));
	}

	private void show(Shelf found) {
		Optional<String> before = selected().map(part -> part.catalog() + "." + part.part().identity().name());
		shelf = found;
		bar.offer(found.parts(), found.approved());
		filter();
		before.flatMap(name -> found.parts().stream().filter(part -> name.equals(part.catalog() + "." + part.part().identity().name())).findFirst())
				.ifPresent(part -> table.setSelection(new StructuredSelection(part)));
	}

	private void filter() {
		if (shelf == null) {
			return;
		}
		PartFilter filter = bar.filter();
		List<OfferedPart> shown = shelf.parts().stream().filter(filter::takes).sorted(Comparator.comparingInt(filter::distance)).toList();
		table.setInput(shown);
		if (!shown.isEmpty() && table.getStructuredSelection().isEmpty()) {
			table.setSelection(new StructuredSelection(table.getElementAt(0)));
		}
		showDeclaration();
		insert.setEnabled(!shown.isEmpty());
		setContentDescription(description(filter, shown.size()));
		if (filter.atCursor().isPresent()) {
			askForCursor();
		}
	}

	private String description(PartFilter filter, int shown) {
		String parts = shown == 0 ? "No part does all that. Esc clears the filters."
				: shown + " of " + shelf.parts().size() + " parts. Return puts the selected one into the text.";
		return filter.atCursor().isPresent() && filter.atCursor().get().isEmpty() ? "There is no part with connectors at the cursor of the editor, so none is left out for that." : parts;
	}

	private void askForCursor() {
		Display display = getSite().getShell().getDisplay();
		Cursor.in(getSite().getPage()).ifPresent(cursor -> cursor.connectors().whenComplete((connectors, failure) -> display.asyncExec(() -> {
			if (failure == null && !table.getTable().isDisposed()) {
				bar.cursorAt(connectors);
			}
		})));
	}

	/** Looks for what plugs into the part at the cursor. */
	void lookForWhatFits() {
		bar.followCursor();
		bar.words().setFocus();
	}

	private void resourceChanged(IResourceChangeEvent event) {
		if (shelf != null && HullFiles.changed(event)) {
			Display display = getSite().getShell().getDisplay();
			display.asyncExec(() -> {
				if (!table.getTable().isDisposed()) {
					read(Cursor.in(getSite().getPage()).map(Cursor::text).or(() -> shelf.text()));
				}
			});
		}
	}

	@Override
	public void setFocus() {
		bar.words().setFocus();
	}

	@Override
	public void dispose() {
		ResourcesPlugin.getWorkspace().removeResourceChangeListener(saved);
		getSite().getPage().removePartListener(editors);
		getSite().getPage().removePostSelectionListener(cursor);
		super.dispose();
	}
}
