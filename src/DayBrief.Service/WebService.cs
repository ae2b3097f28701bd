using DayBrief.Service.Features;
using DayBrief.Service.Features.Actuals;
using DayBrief.Service.Features.Automation;
using DayBrief.Service.Features.Briefs;
using DayBrief.Service.Features.Desk;
using DayBrief.Service.Features.Flights;
using DayBrief.Service.Features.People;
using DayBrief.Service.Features.Phone;
using DayBrief.Service.Features.Sending;
using DayBrief.Service.Features.Sites;
using DayBrief.Service.Features.Soundings;
using DayBrief.Service.Features.Technique;
using DayBrief.Service.Infrastructure;
using DayBrief.Service.Infrastructure.Outgoing;
using DayBrief.Service.Languages;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.ResponseCompression;
using Microsoft.OpenApi;

namespace DayBrief.Service;

/// <summary>Composes the web service.</summary>
internal static class WebService
{
    public static WebApplication Create(string[] args)
    {
        var app = Build(args);
        Map(app);
        OpenStores(app.Services);
        app.Services.GetRequiredService<DemonstrationDays>().AddIfNew();
        return app;
    }

    /// <summary>Every part that keeps something makes its collections and indexes before anybody is served: later, on a full disk,
    /// it could not.</summary>
    private static void OpenStores(IServiceProvider parts)
    {
        foreach (var part in parts.GetRequiredService<IServiceCollection>().Where(part => part is { Lifetime: ServiceLifetime.Singleton, IsKeyedService: false, ImplementationType: not null }))
        {
            if (part.ImplementationType!.GetConstructors().Any(made => made.GetParameters().Any(needed => needed.ParameterType == typeof(Database))))
                _ = parts.GetService(part.ServiceType);
        }
    }

    /// <summary>Its parts alone, for verbs that work on the data folder; nothing runs by itself and nobody is served.</summary>
    public static WebApplication Parts() => Build([]);

    private static WebApplication Build(string[] args)
    {
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            Args = args,
            ContentRootPath = AppContext.BaseDirectory,
        });
        // Its line for each request holds the whole address, and with it the tokens of links.
        builder.Logging.AddFilter("Microsoft.AspNetCore.Hosting.Diagnostics", LogLevel.Warning);
        builder.Services.AddSingleton(new QuietStart(builder.Logging));
        AddServices(builder.Services, builder.Configuration);
        builder.Services.AddSingleton(builder.Services);
        return builder.Build();
    }

    private static void AddServices(IServiceCollection services, ConfigurationManager configuration)
    {
        services.AddSingleton(TimeProvider.System);
        services.AddSingleton(_ => new DataFolder(configuration[DataFolder.Variable]));
        services.AddSingleton(parts => new Room(parts.GetRequiredService<DataFolder>()));
        services.AddSingleton<Database>();
        services.ConfigureHttpJsonOptions(json => Json.Configure(json.SerializerOptions));
        services.AddDataProtection().PersistKeysToFileSystem(
            new DirectoryInfo(Path.Combine(new DataFolder(configuration[DataFolder.Variable]).Root, "keys")));
        services.Configure<RouteHandlerOptions>(routes => routes.ThrowOnBadRequest = true);
        services.Configure<FormOptions>(form => form.ValueLengthLimit = SoundingBody.MaxBytes + 1024);
        services.AddSingleton<IProblemDetailsWriter, ProblemPages>();
        services.AddProblemDetails();
        services.AddExceptionHandler<RefusedInputHandler>();
        services.AddHealthChecks().AddCheck<StoreHealth>("store");
        services.AddResponseCompression(compression => compression.MimeTypes =
            [.. ResponseCompressionDefaults.MimeTypes, "image/svg+xml", "application/problem+json"]);
        services.AddEndpointsApiExplorer();
        services.AddSwaggerGen(swagger =>
        {
            swagger.SwaggerDoc("openapi", new OpenApiInfo { Title = "DayBrief", Version = "v1" });
            KeyInDescription.Describe(swagger);
            swagger.CustomSchemaIds(type => type.ToString().Split('.')[^1].Replace('+', '.').Replace("`1", "", StringComparison.Ordinal));
        });
        services.AddRazorComponents();
        services.Configure<HostOptions>(host => host.ShutdownTimeout = TimeSpan.FromSeconds(8));
        services.AddJobs();
        services.AddOutgoing(configuration);
        services.AddPeople(configuration);
        services.AddSingleton<KnownSites>(parts => () => [.. parts.GetRequiredService<SiteStore>().All().Select(site => (site.Id!, site.Name ?? site.Id!))]);
        services.AddSoundings();
        services.AddBriefs();
        services.AddDesk();
        services.AddActuals();
        services.AddTechnique();
        services.AddAutomation();
        services.AddPhone();
        services.AddSending(configuration);
    }

    private static void Map(WebApplication app)
    {
        app.UseResponseCompression();
        app.UseSecurityHeaders();
        app.UseLanguageChoice();
        app.UseExceptionHandler();
        app.UseStatusCodePages();
        app.UseStaticFiles(new StaticFileOptions
        {
            OnPrepareResponse = file => file.Context.Response.Headers.CacheControl =
                file.Context.Request.Query.ContainsKey(ContentAddress.Parameter) ? "public, max-age=31536000, immutable" : "public, max-age=3600",
        });
        app.UsePeople();
        app.UsePhone();
        app.MapPeople();
        var api = app.MapGroup("/api/v1");
        api.MapSoundings();
        api.MapFlights();
        app.MapSites(api);
        app.MapBriefs(api);
        app.MapDesk();
        app.MapActuals(api);
        app.MapAutomation(api);
        app.MapPhone();
        app.MapSending();
        // Alive is who answers; ready is who can keep what is sent.
        app.MapHealthChecks("/health/live", new() { Predicate = _ => false });
        app.MapHealthChecks("/health/ready", new()
        {
            ResponseWriter = (context, report) => context.Response.WriteAsync(
            string.Join(' ', new[] { report.Status.ToString() }.Concat(report.Entries.Values.Select(entry => entry.Description).OfType<string>())))
        });
        app.UseSwagger(swagger =>
        {
            swagger.OpenApiVersion = OpenApiSpecVersion.OpenApi3_1;
            swagger.RouteTemplate = "api/{documentName}.json";
        });
        app.UseSwaggerUI(pages =>
        {
            pages.RoutePrefix = "api/docs";
            pages.SwaggerEndpoint("/api/openapi.json", "DayBrief v1");
            pages.DocumentTitle = "DayBrief API";
        });
    }
}
