using GuideBuilder.Rendering.Blocks;
using GuideBuilder.Rendering.Markup;
using GuideBuilder.Rendering.Templates;

namespace GuideBuilder.Rendering.Pages;

/// <summary>Reads a text in the order template, CommonMark, blocks: each block that a template calls comes in as a value of its own kind, never as text.</summary>
internal static class TextReader
{
    /// <summary>The blocks of a text, its headings raised by so many levels.</summary>
    internal static ImmutableArray<Block> Read(Bindery bindery, LocalText text, int raise)
    {
        var pieces = TemplateRunner.CommonMark(text, bindery.Names, bindery.Faults);
        var reader = new MarkupReader(text, bindery.Language, bindery.Known, bindery.Faults, raise);
        var blocks = ImmutableArray.CreateBuilder<Block>();
        var level = 0;
        for (var i = 0; i < pieces.Length; i++)
        {
            var read = reader.Read(pieces[i].Text);
            level = read.OfType<Block.Heading>().Select(h => h.Level).LastOrDefault(level);
            blocks.AddRange(read);
            if (pieces[i].Then is { } call)
            {
                blocks.AddRange(Levels.Lower(Make(bindery, text, call, pieces[i].Text, pieces[i + 1].Text), level));
            }
        }

        return blocks.ToImmutable();
    }

    private static ImmutableArray<Block> Make(Bindery bindery, LocalText text, BlockCall call, string before, string after)
    {
        var place = TemplatePlaces.At(text, call.Span.Start);
        if (!EndsLine(before) || !BeginsLine(after))
        {
            bindery.Faults.Add(RenderingFaults.BlockNotAlone(place, call.Name));
            return [];
        }

        if (BlockMakers.ByName.TryGetValue(call.Name, out var make))
        {
            return make(bindery);
        }

        bindery.Faults.Add(RenderingFaults.UnknownBlock(place, call.Name, Nearest.To(call.Name, BlockMakers.ByName.Keys)));
        return [];
    }

    private static bool EndsLine(string before) => before.TrimEnd(' ') is "" or [.., '\n'];

    private static bool BeginsLine(string after) => after.TrimStart(' ') is "" or ['\n', ..] or ['\r', ..];
}
