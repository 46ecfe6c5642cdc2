/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.rulepage;

import hullwright.check.LoadedRule;
import hullwright.workbench.live.AtWork;
import hullwright.workbench.live.ProjectText;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.part.ViewPart;
import org.eclipse.ui.texteditor.ITextEditor;

/**
 * The pages of the rules, those of the house included: why each matters, its limit and the source of that, how to mend it, and what
 * is in force in the project at work.
 */
public final class RulePagesView extends ViewPart {

	/** The id under which plugin.xml declares this view. */
	public static final String ID = "hullwright.workbench.rules";

	private Text words;
	private Tree list;
	private StyledText page;
	private LocalResourceManager resources;
	private RuleShelf shelf;
	private String shown = "";
	private String wanted = "";
	private final Deque<String> before = new ArrayDeque<>();
	private List<RenderedPage.Reference> references = List.of();
	private Action back;
	private long asked;
	private final IPropertyChangeListener colours = event -> render();
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
		resources = new LocalResourceManager(JFaceResources.getResources(), parent);
		SashForm sash = new SashForm(parent, SWT.HORIZONTAL);
		Composite left = new Composite(sash, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(4, 4).applyTo(left);
		words = new Text(left, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
		words.setMessage("Words of a rule or its page");
		GridDataFactory.fillDefaults().grab(true, false).applyTo(words);
		list = new Tree(left, SWT.BORDER | SWT.SINGLE | SWT.FULL_SELECTION);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(list);
		page = new StyledText(sash, SWT.BORDER | SWT.V_SCROLL | SWT.H_SCROLL | SWT.WRAP | SWT.READ_ONLY);
		page.setMargins(14, 10, 14, 10);
		page.setCaret(null);
		sash.setWeights(30, 70);
		words.addModifyListener(event -> fill());
		words.addListener(SWT.KeyDown, event -> {
			if (event.keyCode == SWT.ARROW_DOWN) {
				list.setFocus();
			}
		});
		list.addListener(SWT.Selection, event -> selected().ifPresent(this::show));
		page.addListener(SWT.MouseMove, event -> page.setCursor(event.display.getSystemCursor(at(event.x, event.y).isPresent() ? SWT.CURSOR_HAND : SWT.CURSOR_ARROW)));
		page.addListener(SWT.MouseUp, event -> at(event.x, event.y).ifPresent(this::open));
		createBack();
		PlatformUI.getWorkbench().getThemeManager().addPropertyChangeListener(colours);
		getSite().getPage().addPartListener(editors);
		setContentDescription("The rules are being read.");
		follow();
	}

	private void createBack() {
		back = new Action("Back", PlatformUI.getWorkbench().getSharedImages().getImageDescriptor(ISharedImages.IMG_TOOL_BACK)) {
			@Override
			public void run() {
				if (!before.isEmpty()) {
					String id = before.pop();
					shown = "";
					show(id);
				}
			}
		};
		back.setToolTipText("To the page before");
		back.setEnabled(false);
		getViewSite().getActionBars().getToolBarManager().add(back);
	}

	/** Shows the page of a rule, now or once the rules are read. */
	public void explain(String id) {
		wanted = id;
		words.setText("");
		if (shelf != null) {
			show(id);
		}
	}

	private void follow() {
		Optional<ProjectText> text = AtWork.project(getSite().getPage()).or(() -> shelf == null ? Optional.empty() : shelf.text());
		Optional<Path> known = shelf == null ? Optional.empty() : shelf.text().map(ProjectText::folder);
		if (shelf == null || !text.map(ProjectText::folder).equals(known)) {
			read(text);
		}
	}

	private void read(Optional<ProjectText> text) {
		Display display = getSite().getShell().getDisplay();
		long mine = ++asked;
		RuleShelf.read(text).whenComplete((found, failure) -> display.asyncExec(() -> {
			if (mine == asked && !page.isDisposed()) {
				if (failure != null) {
					setContentDescription("The rules cannot be read: " + failure.getMessage());
				} else {
					shelf = found;
					fill();
					show(wanted.isEmpty() ? shown : wanted);
				}
			}
		}));
	}

	private void fill() {
		if (shelf == null) {
			return;
		}
		list.removeAll();
		Map<String, List<LoadedRule>> families = shelf.rules().stream().filter(this::hasWords)
				.collect(Collectors.groupingBy(rule -> family(rule.description().id()), TreeMap::new, Collectors.toList()));
		families.forEach((family, rules) -> {
			TreeItem item = new TreeItem(list, SWT.NONE);
			item.setText(family + " (" + rules.size() + ")");
			for (LoadedRule rule : rules) {
				TreeItem leaf = new TreeItem(item, SWT.NONE);
				leaf.setText(rule.description().title() + (shelf.on(rule) ? "" : " (off)"));
				leaf.setData(rule.description().id());
				if (rule.description().id().equals(shown)) {
					list.setSelection(leaf);
				}
			}
			item.setExpanded(!words.getText().isBlank() || families.size() == 1);
		});
		int count = families.values().stream().mapToInt(List::size).sum();
		setContentDescription(count == 0 ? "No rule has these words." : count + " of " + shelf.rules().size() + " rules, as they are in force"
				+ shelf.text().map(text -> " in " + text.folder().getFileName()).orElse(" where no profile says otherwise") + ".");
	}

	private static String family(String id) {
		String family = id.substring(0, id.indexOf('/'));
		return family.substring(0, 1).toUpperCase(Locale.ROOT) + family.substring(1);
	}

	private boolean hasWords(LoadedRule rule) {
		String said = (rule.description().id() + " " + rule.description().title() + " " + rule.page().orElse("")).toLowerCase(Locale.ROOT);
		for (String word : words.getText().toLowerCase(Locale.ROOT).strip().split("\\s+")) {
			if (!said.contains(word)) {
				return false;
			}
		}
		return true;
	}

	private Optional<String> selected() {
		return list.getSelectionCount() == 0 ? Optional.empty() : Optional.ofNullable((String) list.getSelection()[0].getData());
	}

	private void show(String id) {
		if (!shown.isEmpty() && !shown.equals(id) && shelf.rule(id).isPresent()) {
			before.push(shown);
		}
		back.setEnabled(!before.isEmpty());
		shown = id;
		wanted = "";
		render();
		selectInList(id);
		page.setTopPixel(0);
	}

	private void selectInList(String id) {
		for (TreeItem family : list.getItems()) {
			for (TreeItem leaf : family.getItems()) {
				if (id.equals(leaf.getData())) {
					list.setSelection(leaf);
				}
			}
		}
	}

	private void render() {
		if (shelf == null || page.isDisposed()) {
			return;
		}
		Set<String> ids = shelf.rules().stream().map(rule -> rule.description().id()).filter(id -> !id.equals(shown)).collect(Collectors.toSet());
		String markdown = shelf.rule(shown).map(shelf::page).orElseGet(() -> shown.isEmpty()
				? "Choose a rule in the list, or press F1 on a finding: its page says why it matters, which limit it holds and where that was read, and how to mend what it finds."
				: "# About the text\n\n`" + shown + "` is no rule about boats that a profile could set: it says that a text, the profile or a plugin of the project "
						+ "cannot be used as it is. The finding itself says what is expected.\n");
		FontDescriptor usual = FontDescriptor.createFrom(page.getFont());
		RenderedPage rendered = RenderedPage.of(markdown, new RenderedPage.Fonts(
				resources.create(usual.increaseHeight(7).setStyle(SWT.BOLD)), resources.create(usual.increaseHeight(2).setStyle(SWT.BOLD)),
				JFaceResources.getTextFont()), ids);
		page.setText(rendered.text());
		page.setStyleRanges(rendered.styles());
		references = rendered.references();
	}

	private Optional<RenderedPage.Reference> at(int x, int y) {
		int offset = page.getOffsetAtPoint(new Point(x, y));
		return references.stream().filter(each -> offset >= each.offset() && offset < each.offset() + each.length()).findFirst();
	}

	private void open(RenderedPage.Reference reference) {
		if (shelf.rule(reference.target()).isPresent()) {
			show(reference.target());
		} else if (reference.target().startsWith("http://") || reference.target().startsWith("https://")) {
			Program.launch(reference.target());
		}
	}

	@Override
	public void setFocus() {
		words.setFocus();
	}

	@Override
	public void dispose() {
		PlatformUI.getWorkbench().getThemeManager().removePropertyChangeListener(colours);
		getSite().getPage().removePartListener(editors);
		super.dispose();
	}
}
