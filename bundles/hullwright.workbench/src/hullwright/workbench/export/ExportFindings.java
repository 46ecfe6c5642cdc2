/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.export;

import hullwright.check.CheckRequest;
import hullwright.check.Snapshot;
import hullwright.report.ProjectReport;
import hullwright.rules.report.CheckReport;
import hullwright.workbench.live.AtWork;
import hullwright.workbench.live.ProjectText;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.ui.IExportWizard;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.statushandlers.StatusManager;

/**
 * Writes what is found on all boats of a project into a file: whole, or not at all.
 */
public final class ExportFindings extends Wizard implements IExportWizard {

	private ExportPage page;

	/** Made by the workbench. */
	public ExportFindings() {
		setWindowTitle("Export");
		setNeedsProgressMonitor(true);
	}

	@Override
	public void init(IWorkbench workbench, IStructuredSelection selection) {
		IResource chosen = selection == null ? null : Adapters.adapt(selection.getFirstElement(), IResource.class);
		Optional<IProject> project = Optional.ofNullable(chosen).map(IResource::getProject);
		page = new ExportPage(project.or(() -> AtWork.file(workbench.getActiveWorkbenchWindow().getActivePage()).map(IResource::getProject)));
	}

	@Override
	public void addPages() {
		addPage(page);
	}

	@Override
	public boolean performFinish() {
		Optional<ProjectText> text = ProjectText.around(page.project());
		ReportForm form = page.form();
		Path file = page.path();
		if (text.isEmpty()) {
			tell("The project is not on this machine.", null);
			return false;
		}
		try {
			getContainer().run(true, true, monitor -> write(text.get().folder(), form, file, monitor));
			return true;
		} catch (InvocationTargetException e) {
			tell("The report was not written: " + e.getCause().getMessage(), e.getCause());
		} catch (InterruptedException e) {
			// called off; nothing was written
		}
		return false;
	}

	private static void write(Path folder, ReportForm form, Path file, IProgressMonitor monitor) throws InvocationTargetException, InterruptedException {
		monitor.beginTask("Checking every boat of " + folder.getFileName(), IProgressMonitor.UNKNOWN);
		try {
			Snapshot snapshot = Snapshot.ofFolder(folder);
			CheckReport report = ProjectText.engine().check(CheckRequest.ofAll(snapshot, LocalDate.now()), monitor::isCanceled);
			WholeFile.write(file, form.written(new ProjectReport(folder.getFileName().toString(), report), snapshot).getBytes(StandardCharsets.UTF_8));
		} catch (CancellationException e) {
			throw new InterruptedException();
		} catch (IOException e) {
			throw new InvocationTargetException(e);
		} finally {
			monitor.done();
		}
	}

	private static void tell(String sentence, Throwable cause) {
		StatusManager.getManager().handle(Status.error(sentence, cause), StatusManager.SHOW);
	}
}
