/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.guide;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.forms.events.ExpansionAdapter;
import org.eclipse.ui.forms.events.ExpansionEvent;
import org.eclipse.ui.forms.widgets.ExpandableComposite;
import org.eclipse.ui.forms.widgets.FormText;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.ScrolledForm;
import org.eclipse.ui.forms.widgets.Section;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.ViewPart;
import org.eclipse.ui.statushandlers.StatusManager;

/**
 * Guided steps: each says what happens and why, and most have a button that takes it. Where somebody is stays remembered.
 */
public final class GuideView extends ViewPart {

	/** The id under which plugin.xml declares this view. */
	public static final String ID = "hullwright.workbench.guide";

	private static final String AT = "step";

	private final List<Step> steps = Step.FIRST_NETWORK.stream().filter(Step::possible).toList();
	private final List<Section> sections = new ArrayList<>();
	private FormToolkit toolkit;
	private ScrolledForm form;
	private int at;

	@Override
	public void init(IViewSite site, IMemento memento) throws PartInitException {
		super.init(site, memento);
		Integer step = memento == null ? null : memento.getInteger(AT);
		at = step == null ? 0 : Math.max(0, Math.min(step, steps.size()));
	}

	@Override
	public void saveState(IMemento memento) {
		memento.putInteger(AT, at);
	}

	@Override
	public void createPartControl(Composite parent) {
		toolkit = new FormToolkit(parent.getDisplay());
		form = toolkit.createScrolledForm(parent);
		form.setText("Your first network in ten minutes");
		GridLayoutFactory.fillDefaults().margins(10, 10).spacing(0, 6).applyTo(form.getBody());
		text(form.getBody(), "You make a small boat, break it, read what is found, mend it, sell a hull and hand the result on. <b>Caution:</b> a design aid replaces "
				+ "neither local codes and the makers' instructions nor a licensed electrician.");
		for (int number = 0; number < steps.size(); number++) {
			createStep(number, steps.get(number));
		}
		Button again = toolkit.createButton(form.getBody(), "Begin again", SWT.PUSH);
		again.addListener(SWT.Selection, event -> goTo(0));
		goTo(at);
	}

	private void createStep(int number, Step step) {
		Section section = toolkit.createSection(form.getBody(), ExpandableComposite.TWISTIE | ExpandableComposite.TITLE_BAR);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(section);
		Composite inside = toolkit.createComposite(section);
		GridLayoutFactory.fillDefaults().numColumns(2).margins(4, 6).applyTo(inside);
		GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(220, SWT.DEFAULT).applyTo(text(inside, step.text()));
		if (!step.command().isEmpty()) {
			Button take = toolkit.createButton(inside, "Do it", SWT.PUSH);
			take.setToolTipText(step.title());
			take.addListener(SWT.Selection, event -> take(step));
		}
		Button next = toolkit.createButton(inside, number == steps.size() - 1 ? "Done" : "Next", SWT.PUSH);
		next.addListener(SWT.Selection, event -> goTo(number + 1));
		section.setClient(inside);
		section.addExpansionListener(new ExpansionAdapter() {
			@Override
			public void expansionStateChanged(ExpansionEvent event) {
				form.reflow(true);
			}
		});
		sections.add(section);
	}

	private FormText text(Composite parent, String words) {
		FormText text = toolkit.createFormText(parent, false);
		text.setText("<form><p>" + words + "</p></form>", true, false);
		GridDataFactory.fillDefaults().grab(true, false).hint(220, SWT.DEFAULT).applyTo(text);
		return text;
	}

	private void take(Step step) {
		try {
			ICommandService commands = getSite().getService(ICommandService.class);
			// what a step is about stands in the editor
			if (getSite().getPage().getActiveEditor() != null) {
				getSite().getPage().activate(getSite().getPage().getActiveEditor());
			}
			getSite().getService(IHandlerService.class).executeCommand(commands.deserialize(step.command()), null);
		} catch (CommandException e) {
			StatusManager.getManager().handle(Status.error("This step cannot be taken now: " + e.getMessage(), e), StatusManager.SHOW);
		}
	}

	/** Opens a step and closes the others; those before it are marked as done. */
	private void goTo(int step) {
		at = step;
		for (int number = 0; number < sections.size(); number++) {
			sections.get(number).setText((number < at ? "\u2713 " : number + 1 + ". ") + steps.get(number).title());
			sections.get(number).setExpanded(number == at);
		}
		form.reflow(true);
		if (at < sections.size()) {
			sections.get(at).setFocus();
		}
	}

	@Override
	public void setFocus() {
		form.setFocus();
	}

	@Override
	public void dispose() {
		if (toolkit != null) {
			toolkit.dispose();
		}
		super.dispose();
	}
}
