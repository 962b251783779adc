import {
  type Application,
  Comment,
  CommentTag,
  Converter,
  type Reflection,
  ReflectionKind,
} from 'typedoc';
import { MarkdownPageEvent, MemberRouter } from 'typedoc-plugin-markdown';
import { floorOf } from './floors.ts';

const sourceOf = (name: Reflection) =>
  name.project.getSymbolIdFromReflection(name)?.packagePath ?? '';

/** Addresses say the floor and the name: `splits/halvesof`; a type's have `types/` between them. */
class FloorRouter extends MemberRouter {
  override getIdealBaseName(name: Reflection): string {
    const isType = name.kindOf(ReflectionKind.Interface | ReflectionKind.TypeAlias);
    return [floorOf(sourceOf(name)).folder, isType ? 'types' : '', name.name]
      .filter(Boolean)
      .join('/')
      .toLowerCase();
  }
}

/** Sorts every public name under its floor, and gives each page the title and links the site needs. */
export function load(app: Application): void {
  app.renderer.defineRouter('floor', FloorRouter);

  app.converter.on(Converter.EVENT_RESOLVE_BEGIN, ({ project }) => {
    for (const module of project.getChildrenByKind(ReflectionKind.Module)) {
      project.mergeReflections(module, project);
    }
    for (const name of project.children ?? []) {
      const holder = name.signatures?.[0] ?? name;
      holder.comment ??= new Comment();
      const text = floorOf(sourceOf(name)).label;
      holder.comment.blockTags.push(new CommentTag('@category', [{ kind: 'text', text }]));
    }
  });

  app.renderer.on(MarkdownPageEvent.BEGIN, (event) => {
    const page = event as MarkdownPageEvent<Reflection>;
    const title = page.model.isProject() ? 'Every public name' : page.model.name;
    page.frontmatter = { title, ...page.frontmatter };
  });

  app.renderer.on(MarkdownPageEvent.END, (page) => {
    page.contents = withErrorLinks(page.contents ?? '').replace(
      /\]\((\/api\/[^)#]*?)(?:index)?\.md(#[^)]*)?\)/g,
      (_link, path: string, anchor = '') => `](${path.replace(/\/?$/, '/')}${anchor})`,
    );
  });
}

/** Each code that a function can raise leads to its meaning and a message that carries it. */
const withErrorLinks = (text: string) =>
  text.replace(/^## Throws$[\s\S]*?(?=^## |(?![\s\S]))/gm, (section) =>
    section.replace(/`([a-z]+(?:-[a-z]+)+)`/g, '[`$1`](/library/errors/#$1)'),
  );
