/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import hullwright.lang.ide.starter.Statements;
import hullwright.workbench.wizard.TextPreview;
import java.time.LocalDate;
import java.util.Optional;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.DateTime;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/**
 * Asks why a finding is to be waived, and until when.
 */
final class WaiverDialog extends TitleAreaDialog {

	private static final int USUAL_MONTHS = 6;

	private final String rule;
	private final String element;
	private final String finding;
	private Text why;
	private Button ends;
	private DateTime last;
	private TextPreview preview;
	private String reason = "";
	private Optional<LocalDate> until = Optional.empty();

	WaiverDialog(Shell parent, String rule, String element, String finding) {
		super(parent);
		this.rule = rule;
		this.element = element;
		this.finding = finding;
		setShellStyle(getShellStyle() | SWT.RESIZE);
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText("Waive finding");
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = (Composite) super.createDialogArea(parent);
		setTitle("Waive " + rule);
		setMessage(finding);
		Composite fields = new Composite(area, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).margins(10, 10).spacing(12, 8).applyTo(fields);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(fields);
		new Label(fields, SWT.NONE).setText("Reason:");
		why = new Text(fields, SWT.BORDER);
		why.setMessage("What makes it bearable, for whoever reads the text later");
		GridDataFactory.fillDefaults().grab(true, false).hint(480, SWT.DEFAULT).applyTo(why);
		ends = new Button(fields, SWT.CHECK);
		ends.setText("Until:");
		ends.setSelection(true);
		last = new DateTime(fields, SWT.DATE | SWT.DROP_DOWN | SWT.BORDER);
		LocalDate usual = LocalDate.now().plusMonths(USUAL_MONTHS);
		last.setDate(usual.getYear(), usual.getMonthValue() - 1, usual.getDayOfMonth());
		GridDataFactory.swtDefaults().applyTo(last);
		new Label(fields, SWT.NONE).setText("Text:");
		preview = new TextPreview(fields);
		GridDataFactory.fillDefaults().grab(true, true).hint(480, 60).applyTo(preview.control());
		why.addModifyListener(event -> changed());
		ends.addListener(SWT.Selection, event -> changed());
		last.addListener(SWT.Selection, event -> changed());
		return area;
	}

	@Override
	protected Control createContents(Composite parent) {
		Control contents = super.createContents(parent);
		changed();
		setErrorMessage(null);
		why.setFocus();
		return contents;
	}

	private void changed() {
		reason = why.getText().strip();
		last.setEnabled(ends.getSelection());
		until = ends.getSelection() ? Optional.of(LocalDate.of(last.getYear(), last.getMonth() + 1, last.getDay())) : Optional.empty();
		Optional<String> problem = reason.isEmpty() ? Optional.of("A waiver without a reason does not count. Write one.")
				: until.filter(day -> day.isBefore(LocalDate.now())).map(day -> "That day has passed already.");
		setErrorMessage(problem.orElse(null));
		getButton(OK).setEnabled(problem.isEmpty());
		preview.show(Statements.waiver(rule, element, reason, until));
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, OK, "Waive", true);
		createButton(parent, CANCEL, "Cancel", false);
	}

	/** Why it is waived. */
	String reason() {
		return reason;
	}

	/** The last day, if it is not for good. */
	Optional<LocalDate> until() {
		return until;
	}
}
