using Microsoft.AspNetCore.Authorization;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace DayBrief.Service.Features.People;

/// <summary>Tells in the description of the API that keys go into <c>X-Api-Key</c>, and which routes ask for one.</summary>
internal sealed class KeyInDescription : IOperationFilter
{
    public static void Describe(SwaggerGenOptions swagger)
    {
        swagger.AddSecurityDefinition(ApiKeyHandler.Header, new OpenApiSecurityScheme
        {
            Type = SecuritySchemeType.ApiKey,
            In = ParameterLocation.Header,
            Name = ApiKeyHandler.Header,
            Description = "A key that an administrator makes at /people/keys, or the one of DAYBRIEF_ADMIN_KEY. In a trial (nobody can sign in yet) none is needed at the machine itself.",
        });
        swagger.OperationFilter<KeyInDescription>();
    }

    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        if (!context.ApiDescription.ActionDescriptor.EndpointMetadata.OfType<IAuthorizeData>().Any())
            return;
        operation.Security = [new() { [new OpenApiSecuritySchemeReference(ApiKeyHandler.Header, context.Document)] = [] }];
        operation.Responses ??= [];
        operation.Responses.TryAdd("401", new OpenApiResponse { Description = "No key, or one that does not work." });
        operation.Responses.TryAdd("403", new OpenApiResponse { Description = "The scope of the key does not cover this." });
    }
}
