using System.Text;
using Washline.App;

Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
Console.InputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
return WashlineProgram.Run(args, Console.In, Console.Out, Console.Error);
