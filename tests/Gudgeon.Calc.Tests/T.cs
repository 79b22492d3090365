namespace Gudgeon.Calc.Tests; public class T { [Fact] public void A() => Assert.Equal(2, 1+1); }
