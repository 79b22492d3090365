using Gudgeon.Book.Build;
using Gudgeon.Book.Checks;
using Gudgeon.Book.Duty;
using Gudgeon.Book.Fields;
using Gudgeon.Book.Files;
using Gudgeon.Book.Jobs;
using Gudgeon.Book.Store;
using Gudgeon.Book.Tests.Store;
using Gudgeon.Book.Values;

namespace Gudgeon.Book.Tests.Jobs;

/// <summary>Job cards worked as people work them, in either form of a book.</summary>
public sealed class CardTests : IDisposable
{
    private const string Card = """
        { "id": "cap", "title": "Cap on", "stage": "trial", "hours": "2 h", "checks": ["squish"],
          "steps": [
            { "id": "clean", "do": "Clean.", "hold": true },
            { "id": "gap", "read": "piston.topRingGap" },
            { "id": "ring", "renew": "O-ring" },
            { "id": "bolts", "tighten": "cap" },
            { "id": "soak", "wait": "8 h", "text": "Soak" } ] }
        """;

    private static readonly CardWork Ada = new("Ada", "2026-11-29T08:00:00Z");
    private static readonly CardWork Tom = new("Tom", "2026-11-29T17:00:00Z");

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Every_card_of_the_program_is_whole()
    {
        Assert.True(CardCatalogue.All.Count >= 25);
        Assert.Equal(CardCatalogue.All.Count, CardCatalogue.All.Select(c => c.Id).Distinct().Count());
        var ids = CardCatalogue.All.Select(c => c.Id).ToHashSet();
        var checks = CheckCatalogue.All.Select(c => c.Id).ToHashSet();
        Assert.All(CardCatalogue.All, c =>
        {
            Assert.Empty(c.After.Except(ids));
            Assert.Empty(c.Checks.Select(k => k.Split('[')[0]).Except(checks));
            Assert.True(c.Hours > 0);
        });
        Assert.Contains(CriticalPath.FirstStart, ids);
    }

    [Fact]
    public void Only_cards_that_the_parts_call_for_appear()
    {
        var bare = Books.Of(("engine.cylinders", "1"));
        var blown = bare.Set(("belt.kind", "toothed"));
        Assert.DoesNotContain(CardStates.Of(bare, bare.Now()), c => c.Card.Id == "drive");
        Assert.Contains(CardStates.Of(blown, blown.Now()), c => c.Card.Id == "drive");
        Assert.Equal("the book does not call for the job card 'drive': it has none of belt", Assert.Throws<BadInputException>(() => CardStates.Find(bare, bare.Now(), "drive")).Message);
    }

    [Theory]
    [InlineData("wren.json")]
    [InlineData("wren.gudgeon")]
    public void A_card_is_worked_from_the_first_tick_to_the_signature(string name)
    {
        var file = Begin(name);
        Refused("cap, ring: held until this is done: Clean.", () => file.Work(b => Ada.Tick(b, "cap", "ring", "", "batch 7", "")));
        file = file.Work(b => Ada.Tick(b, "cap", "clean", "", "", ""));
        Refused("cap, clean: done already, by Ada at 2026-11-29T08:00:00Z", () => file.Work(b => Tom.Tick(b, "cap", "clean", "", "", "")));
        Refused("cap, ring: used once; wanted the batch, number or bag of the new one", () => file.Work(b => Ada.Tick(b, "cap", "ring", "", "", "")));
        file = file.Work(b => Ada.Tick(b, "cap", "ring", "", "batch 7", ""));
        Refused("cap, gap@1: done by a reading of piston[1].topRingGap, such as gudgeon measure piston[1].topRingGap VALUE --with INSTRUMENT --by NAME", () => file.Work(b => Ada.Tick(b, "cap", "gap@1", "", "", "")));
        file = file.Measure("piston[1].topRingGap", "0.34 mm", "feeler", "Ada", "2026-11-29", "");
        file = Tightened(file);
        Refused("cap, soak: was not begun yet", () => file.Work(b => Tom.Tick(b, "cap", "soak", "", "", "")));
        file = file.Work(b => Ada.Start(b, "cap", "soak"));
        Refused("cap, soak: 8 h wanted, 0.0 h gone; to end it sooner takes a note that says why", () => file.Work(b => Ada.Tick(b, "cap", "soak", "", "", "")));
        Refused("cap: 1 of 5 steps is not done; the next is: Soak (8 h)", () => Sign(file, Ada, "it will do"));
        file = file.Work(b => Tom.Tick(b, "cap", "soak", "", "", ""));
        file = Sign(file, Tom, "");
        var card = State(BookFile.Open(_folder.PathOf(name)));
        Assert.Equal((Standing.Signed, "Tom", 5), (card.Standing, card.Signature!.By, card.StepsDone));
        Assert.Contains("piston[1].topRingGap", card.Signature.Reads.Keys);
        Refused("cap: is signed, by Tom at 2026-11-29T17:00:00Z; open it again first", () => file.Work(b => Ada.Untick(b, "cap", "clean", "dirt")));
        Refused("cap: signed already, by Tom at 2026-11-29T17:00:00Z", () => Sign(file, Ada, ""));
        if (file is StoredBook)
        {
            Stores.VerifiesWell(_folder.PathOf(name));
        }
    }

    [Fact]
    public void Bolts_are_ticked_in_their_order_and_with_the_wrench_named()
    {
        var file = Begin("wren.json").Work(b => Ada.Tick(b, "cap", "clean", "", "", ""));
        var step = State(file).Find("bolts")!;
        Assert.Equal([(1, 4), (2, 4), (3, 4), (4, 4)], step.Stages.Select(s => (s.Number, s.Bolts.Count)));
        var first = step.Next!.Value.Bolt;
        var last = step.Stages[0].Bolts[^1];
        Refused($"cap, {first.Key}: wanted the wrench that it was tightened with", () => file.Work(b => Ada.Tick(b, "cap", first.Key, "", "3 N·m", "")));
        Refused($"cap, {last.Key}: bolt {first.Number} of stage 1 comes first (to 3 N·m)", () => file.Work(b => Ada.Tick(b, "cap", last.Key, "wrench", "3 N·m", "")));
        file = file.Work(b => Ada.Tick(b, "cap", first.Key, "wrench", "3 N·m", ""));
        Assert.Equal((first.Key, "wrench", "3 N·m"), State(file).Acts[^1] is var act ? (act.Step, act.With, act.Value) : default);
        Assert.NotEqual(first.Key, State(file).Find("bolts")!.Next!.Value.Bolt.Key);
        file = file.Work(b => Ada.Untick(b, "cap", first.Key, "wrong wrench"));
        Assert.Equal(first.Key, State(file).Find("bolts")!.Next!.Value.Bolt.Key);
    }

    [Fact]
    public void What_a_bolt_was_tightened_to_is_noted_with_what_was_wanted()
    {
        var file = Begin("wren.json").Work(b => Ada.Tick(b, "cap", "clean", "", "", ""));
        var first = State(file).Find("bolts")!.Next!.Value.Bolt.Key;
        Refused($"cap, {first}: wanted what it was tightened to, such as 3 N·m", () => file.Work(b => Ada.Tick(b, "cap", first, "wrench", "", "")));
        Assert.Contains("given '3 mm'", Assert.Throws<BadInputException>(() => file.Work(b => Ada.Tick(b, "cap", first, "wrench", "3 mm", ""))).Message, StringComparison.Ordinal);
        Refused($"cap, {first}: given 3.4 N·m where the plan asks for 3 N·m; so far from it takes a note that says why", () => file.Work(b => Ada.Tick(b, "cap", first, "wrench", "3.4 N·m", "")));
        file = file.Work(b => Ada.Tick(b, "cap", first, "wrench", "3.2 N·m", ""));
        Assert.Equal(("3.2 N·m", "to 3 N·m"), State(file).Acts[^1] is var act ? (act.Value, act.Asked) : default);
        Assert.Equal("to 3 N·m", BookFile.Open(_folder.PathOf("wren.json")).Book.Acts[^1].Asked);
    }

    [Fact]
    public void A_joint_is_taken_back_with_one_act()
    {
        var file = Tightened(Begin("wren.json").Work(b => Ada.Tick(b, "cap", "clean", "", "", "")).Work(b => Ada.Tick(b, "cap", "ring", "", "batch 7", "")));
        Assert.True(State(file).Find("bolts")!.Done);
        file = file.Work(b => Ada.Untick(b, "cap", "bolts", "wrong paste"));
        Assert.All(State(file).Find("bolts")!.Stages.SelectMany(s => s.Bolts), b => Assert.Null(b.Done));
        Refused("cap, bolts: is not ticked", () => file.Work(b => Ada.Untick(b, "cap", "bolts", "again")));
        Assert.True(State(Tightened(file)).Find("bolts")!.Done);
    }

    [Fact]
    public void A_reading_from_before_a_hold_was_passed_ticks_no_step_by_itself()
    {
        var file = Begin("wren.json").Measure("piston[1].topRingGap", "0.34 mm", "feeler", "Tom", "2026-08-12", "");
        Refused("cap, gap@1: held until this is done: Clean.", () => file.Work(b => Ada.Tick(b, "cap", "gap@1", "", "", "")));
        Assert.False(State(file).Find("gap@1")!.Done);
        file = file.Work(b => Ada.Tick(b, "cap", "clean", "", "", ""));
        var step = State(file).Find("gap@1")!;
        Assert.Equal((false, "2026-08-12"), (step.Done, step.Earlier!.Value.On));
        var ticked = file.Work(b => Tom.Tick(b, "cap", "gap@1", "", "", ""));
        Assert.Equal((true, "0.34 mm", "still so; read 2026-08-12 by Tom"), State(ticked).Find("gap@1") is var still ? (still!.Done, still.Tick!.Value, still.Tick.Note) : default);
        var read = file.Measure("piston[1].topRingGap", "0.35 mm", "feeler", "Tom", "2026-11-29", "");
        Assert.True(State(read).Find("gap@1")!.Done);
        Refused("cap, gap@1: done already, by the reading 0.35 mm of piston[1].topRingGap", () => read.Work(b => Tom.Tick(b, "cap", "gap@1", "", "", "")));
    }

    [Theory]
    [InlineData(null, "2026-11-29", false)]
    [InlineData("2026-11-29T08:00:00Z", "2026-11-28", false)]
    [InlineData("2026-11-29T08:00:00Z", "2026-11-30", true)]
    [InlineData("2026-11-29T08:00:30Z", "2026-11-29T08:00:30Z", true)]
    [InlineData("2026-11-29T08:00:30Z", "2026-11-29T08:00:29Z", false)]
    [InlineData("2026-11-29T08:00:00Z", "by heart", false)]
    public void A_reading_counts_from_when_the_course_of_its_card_began(string? begins, string on, bool counts) =>
        Assert.Equal(counts, CardCourse.Within(begins is null ? null : CardWork.At(begins), on));

    [Fact]
    public void What_a_card_did_not_ask_when_it_was_signed_opens_it_again()
    {
        var file = Sign(AllDone(Begin("wren.json")), Tom, "as it is");
        var put = file.PutCard(Card.Replace("\"steps\": [", "\"steps\": [ { \"id\": \"lamp\", \"do\": \"Looked in.\" },", StringComparison.Ordinal), "cap.json");
        Assert.Equal((Standing.LookAgain, "not done: Looked in."), (State(put).Standing, Assert.Single(State(put).LookAgain)));
        var stricter = put.PutCard(Card, "cap.json").Limit("squish.min", "2 mm", "mine");
        Assert.Equal((Standing.LookAgain, "the limit squish.min was the usual one when it was signed, and is 2 mm"), (State(stricter).Standing, Assert.Single(State(stricter).LookAgain)));
    }

    [Fact]
    public void Another_torque_after_the_signature_opens_the_card_again()
    {
        var file = Sign(AllDone(Begin("wren.json")), Tom, "as it is").Set("joint[cap].torque", "12 N·m", Stores.NoStory);
        Assert.Contains("joint[cap].torque was 10 N·m when it was signed, and is 12 N·m", State(file).LookAgain);
        var bolt = State(file).Find("bolts")!.Stages[0].Bolts[0];
        Assert.Equal(("to 3 N·m", null), (bolt.Ticked!.Asked, bolt.Done));
        Refused("cap: 1 of 5 steps is not done; the next is: Tighten the joint cap after its plan.", () => Sign(file, Ada, "it will do"));
        file = Tightened(file);
        Assert.Equal("to 3.6 N·m", State(file).Find("bolts")!.Stages[0].Bolts[0].Done!.Asked);
        Assert.Equal(Standing.Signed, State(Sign(file, Ada, "")).Standing);
    }

    [Fact]
    public void What_was_done_after_the_signature_is_signed_anew()
    {
        var file = Sign(AllDone(Begin("wren.json")), Tom, "as it is").PutCard(Card.Replace("\"steps\": [", "\"steps\": [ { \"id\": \"lamp\", \"do\": \"Looked in.\" },", StringComparison.Ordinal), "cap.json");
        file = file.Work(b => Tom.Tick(b, "cap", "lamp", "", "", ""));
        Assert.Equal((Standing.LookAgain, "worked on since it was signed: lamp"), (State(file).Standing, Assert.Single(State(file).LookAgain)));
        Assert.Equal(Standing.Signed, State(Sign(file, Ada, "")).Standing);
    }

    [Fact]
    public void A_joint_of_which_only_the_torque_is_known_is_held_to_it()
    {
        var file = Begin("wren.json").Set("joint[hub].torque", "60 N·m", Stores.NoStory).Set("clutch.faces", "14", Stores.NoStory);
        CardState Clutch() => CardStates.Find(file.Book, file.Book.Now(), "clutch");
        Assert.Contains("How many bolts it has is not known: wants joint[hub].bolts.", Clutch().Find("nut")!.Troubles);
        Refused("clutch, nut: given 36 N·m where the plan asks for 60 N·m; so far from it takes a note that says why", () => file.Work(b => Ada.Tick(b, "clutch", "nut", "w60", "36 N·m", "")));
        file = file.Work(b => Ada.Tick(b, "clutch", "nut", "w60", "60 N·m", ""));
        Assert.True(Clutch().Find("nut")!.Done);
        Assert.Contains("joint[hub].torque", Examined.Of(Clutch(), file.Book.Now(), new Appraiser(new DutyDesk())).Reads.Keys);
    }

    [Fact]
    public void A_wrench_that_does_not_reach_is_refused_and_one_that_barely_does_is_noted()
    {
        var file = Begin("wren.json").Set("instrument[w10].kind", "torque wrench", Stores.NoStory).Set("instrument[w10].from", "5 N·m", Stores.NoStory).Set("instrument[w10].to", "40 N·m", Stores.NoStory)
            .Work(b => Ada.Tick(b, "cap", "clean", "", "", ""));
        var first = State(file).Find("bolts")!.Next!.Value.Bolt.Key;
        Refused($"cap, {first}: given '3 N·m' with instrument[w10], which reads 5 N·m to 40 N·m; wanted an instrument that reaches so far", () => file.Work(b => Ada.Tick(b, "cap", first, "w10", "3 N·m", "")));
        file = file.Set("instrument[w10].from", "2 N·m", Stores.NoStory).Work(b => Ada.Tick(b, "cap", first, "w10", "3 N·m", ""));
        Assert.Equal("w10 (below a fifth of its range)", State(file).Acts[^1].With);
    }

    [Fact]
    public void A_bolt_that_is_backed_off_wants_no_torque_of_a_wrench_of_the_books()
    {
        var file = Begin("wren.json").Set("joint[cap].backOff", "yes", Stores.NoStory).Set("instrument[w40].kind", "torque wrench", Stores.NoStory).Set("instrument[w40].to", "40 N·m", Stores.NoStory)
            .Work(b => Ada.Tick(b, "cap", "clean", "", "", ""));
        for (var next = State(file).Find("bolts")!.Next; next is { Stage.Stage.Value: { } torque } asked; next = State(file).Find("bolts")!.Next)
        {
            file = file.Work(b => Ada.Tick(b, "cap", asked.Bolt.Key, "hand", Joint.Torque.Print(torque), ""));
        }

        var off = State(file).Find("bolts")!.Next!.Value;
        Assert.Equal("back off", off.Stage.Stage.Words(imperial: false));
        file = file.Work(b => Ada.Tick(b, "cap", off.Bolt.Key, "w40", "", ""));
        Assert.Equal(("w40", "back off"), State(file).Acts[^1] is var act ? (act.With, act.Asked) : default);
    }

    [Fact]
    public void A_reading_found_still_so_is_that_reading_and_no_other()
    {
        var file = Begin("wren.json").Measure("piston[1].topRingGap", "0.34 mm", "feeler", "Tom", "2026-08-12", "").Work(b => Ada.Tick(b, "cap", "clean", "", "", ""));
        Refused("cap, gap@1: given '0.4 mm'; a reading is taken with its instrument: gudgeon measure piston[1].topRingGap \"0.4 mm\" --with INSTRUMENT --by NAME", () => file.Work(b => Ada.Tick(b, "cap", "gap@1", "", "0.4 mm", "")));
        file = file.Work(b => Ada.Tick(b, "cap", "gap@1", "", "", ""));
        Assert.True(State(file).Find("gap@1")!.Done);
        Assert.False(State(file.Measure("piston[1].topRingGap", "0.36 mm", "feeler", "Tom", "2026-09-01", "")).Find("gap@1")!.Done);
    }

    [Fact]
    public void A_process_done_over_is_timed_from_its_new_beginning()
    {
        var file = Begin("wren.json").Work(b => Ada.Tick(b, "cap", "clean", "", "", "")).Work(b => Ada.Start(b, "cap", "soak")).Work(b => Tom.Tick(b, "cap", "soak", "", "", ""));
        file = file.Work(b => Tom.Untick(b, "cap", "soak", "it had run dry")).Work(b => Tom.Start(b, "cap", "soak"));
        Assert.Equal(Tom.On, State(file).Find("soak")!.Begun!.On);
        Refused("cap, soak: 8 h wanted, 0.0 h gone; to end it sooner takes a note that says why", () => file.Work(b => Tom.Tick(b, "cap", "soak", "", "", "")));
    }

    [Fact]
    public void A_part_of_single_use_is_no_second_step_where_the_card_renews_it()
    {
        var file = Begin("wren.json").Set("clutch.faces", "14", Stores.NoStory);
        foreach (var (part, name) in new[] { ("washer", "Lock washer of the hub"), ("plates", "Friction plates") })
        {
            file = file.Set($"part[{part}].card", "clutch", Stores.NoStory).Set($"part[{part}].singleUse", "yes", Stores.NoStory).Set($"part[{part}].name", name, Stores.NoStory);
        }

        Assert.Equal(["part-plates"], CardStates.Find(file.Book, file.Book.Now(), "clutch").Steps.Select(s => s.Key).Where(k => k.StartsWith("part-", StringComparison.Ordinal)));
    }

    [Fact]
    public void What_is_used_once_is_noted_anew_when_the_card_was_opened_again()
    {
        var file = Sign(AllDone(Begin("wren.json")), Tom, "as it is").Work(b => Tom.Reopen(b, "cap", "it weeps"));
        Assert.False(State(file).Find("ring")!.Done);
        var later = Tom with { On = "2026-11-30T09:00:00Z" };
        Assert.Equal("batch 8", State(file.Work(b => later.Tick(b, "cap", "ring", "", "batch 8", ""))).Find("ring")!.Tick!.Value);
    }

    [Fact]
    public void A_part_of_single_use_is_a_step_of_a_card_that_asks_for_none()
    {
        var file = Begin("wren.json").Set("part[o-ring].card", "clean", Stores.NoStory).Set("part[o-ring].singleUse", "yes", Stores.NoStory).Set("part[o-ring].name", "plug O-rings", Stores.NoStory);
        CardState Clean() => CardStates.Find(file.Book, file.Book.Now(), "clean");
        Assert.Equal("New: plug O-rings.", Clean().Find("part-o-ring")!.Words);
        Refused("clean, part-o-ring: used once; wanted the batch, number or bag of the new one", () => file.Work(b => Ada.Tick(b, "clean", "part-o-ring", "", "", "")));
        Refused("wren.json, part[o-ring].card: given 'cleen', wanted the id of a job card; the nearest is 'clean'", () => file.Set("part[o-ring].card", "cleen", Stores.NoStory));
    }

    [Fact]
    public void A_tool_of_the_books_is_kept_with_how_its_calibration_stood()
    {
        var file = Begin("wren.json").Set("instrument[w10].kind", "torque wrench", Stores.NoStory).Set("instrument[w10].due", "2026-10-31", Stores.NoStory)
            .Work(b => Ada.Tick(b, "cap", "clean", "w10", "", ""));
        Assert.Equal("w10 (calibration overdue since 2026-10-31)", State(file).Acts[^1].With);
        file = file.Set("instrument[w10].due", "2027-10-31", Stores.NoStory).Work(b => Ada.Tick(b, "cap", "ring", "w10", "batch 7", ""));
        Assert.Equal("w10 (calibration due 2027-10-31)", State(file).Acts[^1].With);
    }

    [Fact]
    public void What_falls_short_is_signed_only_with_a_reason_that_stays_in_the_book()
    {
        var file = AllDone(Begin("wren.json").Limit("squish.min", "3 mm", "to see"));
        Assert.StartsWith("cap: not to be signed: squish[1] falls short: ", Assert.Throws<BadInputException>(() => Sign(file, Tom, "")).Message, StringComparison.Ordinal);
        var signed = State(Sign(file, Tom, "trial assembly"));
        Assert.Equal((Standing.Signed, "trial assembly"), (signed.Standing, signed.Signature!.Note));
        Assert.StartsWith("squish[1] falls short: ", Assert.Single(signed.Signature.Overridden), StringComparison.Ordinal);
    }

    [Fact]
    public void A_value_that_moves_after_the_signature_opens_the_card_again_and_says_why()
    {
        var file = Sign(AllDone(Begin("wren.gudgeon")), Tom, "as it is");
        Assert.Equal(Standing.Signed, State(file).Standing);
        file = file.Measure("piston[1].topRingGap", "0.41 mm", "feeler", "Ada", "2026-11-30", "");
        var again = State(file);
        Assert.Equal((Standing.LookAgain, "piston[1].topRingGap was 0.34 mm when it was signed, and is 0.41 mm"), (again.Standing, Assert.Single(again.LookAgain)));
        Assert.Equal(Standing.Signed, State(Sign(file, Ada, "looked at")).Standing);
        Assert.Equal("opened again by Ada: noise", Assert.Single(State(BookFile.Open(_folder.PathOf("wren.gudgeon")).Work(b => Ada.Reopen(b, "cap", "noise"))).LookAgain));
    }

    [Fact]
    public void Cards_wait_for_those_before_them_and_for_parts()
    {
        var book = Books.Of(("engine.cylinders", "1"), ("part[hone].name", "hone stones"), ("part[hone].state", "ordered"), ("part[hone].card", "strip"), ("part[hone].orderedOn", "2026-12-01"), ("part[hone].leadTime", "10 d"));
        var cards = CardStates.Of(book, book.Now());
        Assert.Equal(["part hone stones (ordered, promised for 2026-12-11)"], cards.First(c => c.Card.Id == "strip").WaitsFor);
        Assert.Equal(["Strip the engine"], cards.First(c => c.Card.Id == "clean").WaitsFor);
    }

    [Fact]
    public void A_card_that_is_left_out_is_passed_over()
    {
        var file = Begin("wren.json");
        Refused("a card left out needs a reason", () => file.Work(b => Ada.LeaveOut(b, "strip", " ")));
        file = file.Work(b => Ada.LeaveOut(b, "strip", "came stripped"));
        Assert.Equal(Standing.Ready, CardStates.Find(file.Book, file.Book.Now(), "clean").Standing);
        file = file.Work(b => Ada.TakeIn(b, "strip"));
        Assert.Equal(Standing.Waiting, CardStates.Find(file.Book, file.Book.Now(), "clean").Standing);
    }

    [Theory]
    [InlineData("""{ "id": "x", "title": "X", "stage": "s", "hours": "2 mm", "steps": [{ "id": "a", "do": "A" }] }""", "x.json, line 1, the card.hours: the time: given '2 mm'")]
    [InlineData("""{ "id": "x", "title": "X", "stage": "s", "hours": "2 h", "steps": [] }""", "missing 'steps'")]
    [InlineData("""{ "id": "x", "title": "X", "stage": "s", "hours": "2 h", "steps": [{ "id": "a", "do": "A", "wait": "1 h" }] }""", "wanted just one of do, read, tighten, wait, renew, photo; given do and wait")]
    [InlineData("""{ "id": "x", "title": "X", "stage": "s", "hours": "2 h", "steps": [{ "id": "a", "read": "piston.topRingGp" }] }""", "the nearest is 'piston.topRingGap'")]
    [InlineData("""{ "id": "x", "title": "X", "stage": "s", "hours": "2 h", "when": ["blowr"], "steps": [{ "id": "a", "do": "A" }] }""", "given 'blowr'")]
    [InlineData("""{ "id": "x", "title": "X", "stage": "s", "hours": "2 h", "steps": [{ "id": "a", "do": "A", "hold": "true" }] }""", "hold: given true, wanted true or false")]
    [InlineData("""{ "id": "x", "title": "X", "stage": "s", "hours": "2 h", "checks": ["sqush[1]"], "steps": [{ "id": "a", "do": "A" }] }""", "given 'sqush[1]', wanted a check such as squish or bolt-preload[head]; the nearest is 'squish'")]
    [InlineData("""{ "id": "x", "title": "X", "stage": "s", "hours": "2 h", "after": ["camz"], "steps": [{ "id": "a", "do": "A" }] }""", "the card.after: given 'camz', wanted the id of a job card; the nearest is 'cams'")]
    [InlineData("""{ "id": "x", "title": "X", "stage": "s", "hours": "2 h", "after": ["x"], "steps": [{ "id": "a", "do": "A" }] }""", "job card x: comes after itself")]
    [InlineData("""{ "id": "strip", "title": "X", "stage": "s", "hours": "2 h", "after": ["clean"], "steps": [{ "id": "a", "do": "A" }] }""", "job cards: clean and strip wait for each other")]
    public void A_card_that_cannot_be_taken_is_refused_in_one_sentence(string text, string sentence) =>
        Assert.Contains(sentence, Assert.Throws<BadInputException>(() => Begin("wren.json").PutCard(text, "x.json")).Message, StringComparison.Ordinal);

    [Fact]
    public void A_card_of_the_books_own_takes_the_place_of_the_programs()
    {
        var file = Begin("wren.gudgeon");
        var own = CardCatalogue.Written(file, "strip").Replace("Strip the engine", "Take it apart", StringComparison.Ordinal);
        file = file.PutCard(own, "strip.json");
        Assert.Equal(("Take it apart", true), CardStates.Find(file.Book, file.Book.Now(), "strip").Card is var card ? (card.Title, card.Own) : default);
        Assert.Equal(CardCatalogue.Of(file.Book).Count, CardCatalogue.All.Count + 1);
        Stores.VerifiesWell(_folder.PathOf("wren.gudgeon"));
        Stores.Same(file.Book, file.CopyTo(_folder.PathOf("copy.json")).Book);
    }

    [Theory]
    [InlineData("start", "yesterday", "acts[0].on: given 'yesterday', wanted a time in UTC such as 2026-11-29T08:00:00Z")]
    [InlineData("begin", "2026-11-29T08:00:00Z", "acts[0].act: given 'begin', wanted tick or untick or start")]
    public void An_act_that_cannot_be_is_refused_where_it_is_read(string act, string on, string sentence)
    {
        var path = _folder.Write("x.json", $$"""{ "gudgeon": 1, "name": "x", "acts": [{ "card": "clutch", "step": "soak", "act": "{{act}}", "by": "Ada", "on": "{{on}}" }] }""");
        Assert.Contains(sentence, Assert.Throws<BadInputException>(() => BookFile.Open(path)).Message, StringComparison.Ordinal);
    }

    private static void Refused(string sentence, Action act) => Assert.Equal(sentence, Assert.Throws<BadInputException>(act).Message);

    private static CardState State(BookFile file) => CardStates.Find(file.Book, file.Book.Now(), "cap");

    private static BookFile Sign(BookFile file, CardWork who, string because)
    {
        var now = file.Book.Now();
        var examined = Examined.Of(State(file), now, new Appraiser(new DutyDesk()));
        return file.Work(b => who.Sign(b, "cap", examined, because));
    }

    private static BookFile Tightened(BookFile file)
    {
        while (State(file).Find("bolts")!.Next is { } next)
        {
            file = file.Work(b => Ada.Tick(b, "cap", next.Bolt.Key, "wrench", Joint.Torque.Print(next.Stage.Stage.Value!.Value), ""));
        }

        return file;
    }

    private static BookFile AllDone(BookFile file)
    {
        file = file.Work(b => Ada.Tick(b, "cap", "clean", "", "", "")).Work(b => Ada.Tick(b, "cap", "ring", "", "batch 7", "")).Measure("piston[1].topRingGap", "0.34 mm", "feeler", "Ada", "2026-11-29", "");
        return Tightened(file).Work(b => Ada.Start(b, "cap", "soak")).Work(b => Tom.Tick(b, "cap", "soak", "", "", ""));
    }

    private BookFile Begin(string name)
    {
        (string Path, string Value)[] values =
        [
            ("engine.cylinders", "1"), ("joint[cap].bolts", "4"), ("joint[cap].torque", "10 N·m"),
            ("crank.stroke", "60 mm"), ("rod.length", "110 mm"), ("cylinder.deckHeight", "0.4 mm"), ("cylinder.gasketThickness", "0.8 mm"),
        ];
        var file = BookFile.Create(_folder.PathOf(name), "Wren", new Hand("Ada", "bench"));
        file = values.Aggregate(file, (f, v) => f.Set(v.Path, v.Value, Stores.NoStory));
        return file.PutCard(Card, "cap.json");
    }
}
