/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench;

import java.util.Map;
import org.eclipse.jface.action.GroupMarker;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.jface.action.ICoolBarManager;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.action.ToolBarContributionItem;
import org.eclipse.jface.action.ToolBarManager;
import org.eclipse.swt.SWT;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.actions.ContributionItemFactory;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.ide.IDEActionFactory;
import org.eclipse.ui.menus.CommandContributionItem;
import org.eclipse.ui.menus.CommandContributionItemParameter;
import org.eclipse.ui.texteditor.ITextEditorActionDefinitionIds;

/**
 * Menu bar and tool bar. Every entry is a platform command, so it has its key and its handler from there.
 */
final class MainMenu extends ActionBarAdvisor {

	/** The platform writes its own labels like titles. */
	private static final Map<String, String> IN_SENTENCE_CASE = Map.of(
			ActionFactory.CLOSE.getId(), "&Close editor",
			ActionFactory.CLOSE_ALL.getId(), "C&lose all editors",
			ActionFactory.SAVE_AS.getId(), "Save &as\u2026",
			ActionFactory.SAVE_ALL.getId(), "Sav&e all",
			ActionFactory.SELECT_ALL.getId(), "Select &all",
			ActionFactory.RESET_PERSPECTIVE.getId(), "&Reset layout\u2026",
			ActionFactory.ABOUT.getId(), "&About Hullwright");

	private IWorkbenchWindow window;

	MainMenu(IActionBarConfigurer configurer) {
		super(configurer);
	}

	@Override
	protected void makeActions(IWorkbenchWindow window) {
		this.window = window;
		// The text editor looks these up by their global names.
		for (ActionFactory global : new ActionFactory[] { ActionFactory.SAVE, ActionFactory.SAVE_AS, ActionFactory.SAVE_ALL,
				ActionFactory.REVERT, ActionFactory.UNDO, ActionFactory.REDO, ActionFactory.CUT, ActionFactory.COPY,
				ActionFactory.PASTE, ActionFactory.DELETE, ActionFactory.SELECT_ALL, ActionFactory.FIND, ActionFactory.RENAME,
				ActionFactory.MOVE, ActionFactory.REFRESH, ActionFactory.PROPERTIES, ActionFactory.PRINT,
				ActionFactory.CLOSE, ActionFactory.CLOSE_ALL, ActionFactory.IMPORT, ActionFactory.EXPORT, ActionFactory.QUIT,
				ActionFactory.PREFERENCES, ActionFactory.RESET_PERSPECTIVE, ActionFactory.ABOUT,
				ActionFactory.BACKWARD_HISTORY, ActionFactory.FORWARD_HISTORY, ActionFactory.OPEN_NEW_WINDOW,
				IDEActionFactory.OPEN_PROJECT, IDEActionFactory.CLOSE_PROJECT }) {
			IAction action = global.create(window);
			if (IN_SENTENCE_CASE.containsKey(action.getId())) {
				action.setText(IN_SENTENCE_CASE.get(action.getId()));
			}
			register(action);
		}
	}

	@Override
	protected void fillMenuBar(IMenuManager bar) {
		bar.add(fileMenu());
		bar.add(editMenu());
		bar.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
		bar.add(windowMenu());
		bar.add(helpMenu());
	}

	private MenuManager fileMenu() {
		MenuManager menu = new MenuManager("&File", IWorkbenchActionConstants.M_FILE);
		MenuManager fresh = new MenuManager("&New", "new");
		fresh.add(ContributionItemFactory.NEW_WIZARD_SHORTLIST.create(window));
		menu.add(fresh);
		menu.add(command("hullwright.workbench.openFolder"));
		menu.add(new Separator());
		menu.add(getAction(ActionFactory.CLOSE.getId()));
		menu.add(getAction(ActionFactory.CLOSE_ALL.getId()));
		menu.add(new Separator());
		menu.add(getAction(ActionFactory.SAVE.getId()));
		menu.add(getAction(ActionFactory.SAVE_AS.getId()));
		menu.add(getAction(ActionFactory.SAVE_ALL.getId()));
		menu.add(getAction(ActionFactory.REVERT.getId()));
		menu.add(new Separator());
		menu.add(command("hullwright.workbench.savePicture", "Save pic&ture as\u2026"));
		menu.add(getAction(ActionFactory.PRINT.getId()));
		menu.add(new Separator());
		menu.add(getAction(ActionFactory.RENAME.getId()));
		menu.add(getAction(ActionFactory.REFRESH.getId()));
		menu.add(new Separator());
		menu.add(getAction(ActionFactory.IMPORT.getId()));
		menu.add(getAction(ActionFactory.EXPORT.getId()));
		menu.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
		menu.add(new Separator());
		menu.add(getAction(ActionFactory.QUIT.getId()));
		menu.add(new GroupMarker(IWorkbenchActionConstants.FILE_END));
		return menu;
	}

	private MenuManager editMenu() {
		MenuManager menu = new MenuManager("&Edit", IWorkbenchActionConstants.M_EDIT);
		menu.add(getAction(ActionFactory.UNDO.getId()));
		menu.add(getAction(ActionFactory.REDO.getId()));
		menu.add(new GroupMarker(IWorkbenchActionConstants.UNDO_EXT));
		menu.add(new Separator());
		menu.add(getAction(ActionFactory.CUT.getId()));
		menu.add(getAction(ActionFactory.COPY.getId()));
		menu.add(getAction(ActionFactory.PASTE.getId()));
		menu.add(new GroupMarker(IWorkbenchActionConstants.CUT_EXT));
		menu.add(new Separator());
		menu.add(getAction(ActionFactory.DELETE.getId()));
		menu.add(getAction(ActionFactory.SELECT_ALL.getId()));
		menu.add(new Separator());
		menu.add(getAction(ActionFactory.FIND.getId()));
		// the text editor's own actions go to these groups, and it does not open without them
		menu.add(new GroupMarker(IWorkbenchActionConstants.FIND_EXT));
		menu.add(new Separator());
		menu.add(new GroupMarker(IWorkbenchActionConstants.ADD_EXT));
		menu.add(command(ITextEditorActionDefinitionIds.CONTENT_ASSIST_PROPOSALS, "&Complete"));
		menu.add(command("hullwright.workbench.insertPart"));
		menu.add(command("org.eclipse.ui.navigate.next", "&Next finding"));
		menu.add(command("org.eclipse.ui.navigate.previous", "Pre&vious finding"));
		menu.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
		return menu;
	}

	private MenuManager windowMenu() {
		MenuManager menu = new MenuManager("&Window", IWorkbenchActionConstants.M_WINDOW);
		MenuManager views = new MenuManager("Show &view", "showView");
		views.add(ContributionItemFactory.VIEWS_SHORTLIST.create(window));
		menu.add(views);
		menu.add(getAction(ActionFactory.RESET_PERSPECTIVE.getId()));
		menu.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
		menu.add(new Separator());
		menu.add(getAction(ActionFactory.PREFERENCES.getId()));
		return menu;
	}

	private MenuManager helpMenu() {
		MenuManager menu = new MenuManager("&Help", IWorkbenchActionConstants.M_HELP);
		menu.add(command("hullwright.workbench.firstNetwork"));
		menu.add(command("hullwright.workbench.explain"));
		menu.add(command("org.eclipse.ui.window.quickAccess", "&Find actions"));
		menu.add(command("org.eclipse.ui.window.showKeyAssist", "Show &keys"));
		menu.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
		menu.add(new Separator());
		menu.add(getAction(ActionFactory.ABOUT.getId()));
		return menu;
	}

	@Override
	protected void fillCoolBar(ICoolBarManager bar) {
		ToolBarManager file = new ToolBarManager(SWT.FLAT | SWT.RIGHT);
		file.add(command("org.eclipse.ui.newWizard"));
		file.add(command(IWorkbenchCommandConstants.FILE_SAVE));
		file.add(command(IWorkbenchCommandConstants.FILE_SAVE_ALL));
		bar.add(new ToolBarContributionItem(file, IWorkbenchActionConstants.TOOLBAR_FILE));
		ToolBarManager edit = new ToolBarManager(SWT.FLAT | SWT.RIGHT);
		edit.add(command(IWorkbenchCommandConstants.EDIT_UNDO));
		edit.add(command(IWorkbenchCommandConstants.EDIT_REDO));
		bar.add(new ToolBarContributionItem(edit, "edit"));
		bar.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
	}

	private IContributionItem command(String id, String label) {
		CommandContributionItemParameter parameter = new CommandContributionItemParameter(window, null, id, CommandContributionItem.STYLE_PUSH);
		parameter.label = label;
		return new CommandContributionItem(parameter);
	}

	private IContributionItem command(String id) {
		return new CommandContributionItem(new CommandContributionItemParameter(window, null, id, CommandContributionItem.STYLE_PUSH));
	}
}
